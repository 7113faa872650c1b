package org.ohmstead.intake.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.ohmstead.intake.forensics.Series;
import org.ohmstead.intake.forensics.WalkedString;
import org.ohmstead.kernel.OhmicKind;

/**
 * Hands in honest surveys of invented strings, and such as were copied, rounded, made up or badly measured, and prints how
 * many are doubted, as a Markdown table. Started by {@code ops/bench/walks}; takes the number of strings per cell.
 */
public final class LikenessContest {

    private static final int[] SIZES = {12, 24, 60, 120, 240};
    private static final int SURVEYS_BEFORE = 3;
    private static final int HONEST_FOR_ONE = 4;
    private static final Set<RemarkCode> ACCUSING =
            EnumSet.of(RemarkCode.COPIED, RemarkCode.COPIED_ALIKE, RemarkCode.SCATTER_HIGH, RemarkCode.DIGITS_REGULAR);

    /**
     * How somebody may type last digits: 3 and 7 too often, 0 and 9 seldom, and four times in five not the digit before. The
     * figures are invented; that people who make up numbers do so is from memory (Mosimann and others 2002).
     */
    private static final double[] TYPED = {0.04, 0.07, 0.13, 0.14, 0.10, 0.08, 0.11, 0.17, 0.12, 0.04};

    private static final double AVOIDS_REPEATING = 0.8;

    private final int rounds;

    LikenessContest(int rounds) {
        this.rounds = rounds;
    }

    public static void main(String[] args) {
        new LikenessContest(args.length > 0 ? Integer.parseInt(args[0]) : 500).print();
    }

    /** A way in which a survey comes about, and the remarks that see it. */
    enum Origin {
        HONEST("honest, three digits", 3, ACCUSING),
        HONEST_TWO_DIGITS("honest, instrument of two digits", 2, ACCUSING),
        HONEST_NOISIER("honest, 1.5 times the usual noise", 3, ACCUSING),
        COPIED("copied exactly", 3, EnumSet.of(RemarkCode.COPIED)),
        COPIED_TOUCHED("copied, changed by 0.3 %", 3, EnumSet.of(RemarkCode.COPIED, RemarkCode.COPIED_ALIKE)),
        ROUNDED("rounded to two digits", 3, EnumSet.of(RemarkCode.DIGITS_REGULAR)),
        TYPED("last digits made up", 3, EnumSet.of(RemarkCode.DIGITS_REGULAR)),
        SCATTERED("three times the usual noise", 3, EnumSet.of(RemarkCode.SCATTER_HIGH));

        private final String words;
        private final int decimals;
        private final Set<RemarkCode> seenBy;

        Origin(String words, int decimals, Set<RemarkCode> seenBy) {
            this.words = words;
            this.decimals = decimals;
            this.seenBy = seenBy;
        }

        boolean isHonest() {
            return seenBy == ACCUSING;
        }
    }

    /** How many of so many surveys were remarked on. */
    record Tally(int runs, int remarked) {

        String words() {
            return remarked == 0 || remarked > runs / 100
                    ? String.format(Locale.ROOT, "%.1f %%", 100.0 * remarked / runs)
                    : remarked + " of " + runs;
        }
    }

    private void print() {
        System.out.println("\nSurveys with " + SURVEYS_BEFORE + " earlier ones, remarked on:\n");
        System.out.println("| survey |"
                + String.join(
                        "|",
                        Arrays.stream(SIZES).mapToObj(n -> " " + n + " jars ").toList()) + "|");
        System.out.println("|---|" + "---|".repeat(SIZES.length));
        for (Origin origin : Origin.values()) {
            StringBuilder row = new StringBuilder("| " + origin.words + " |");
            for (int jars : SIZES) {
                row.append(' ').append(run(jars, origin).words()).append(" |");
            }
            System.out.println(row);
        }
    }

    Tally run(int jars, Origin origin) {
        int runs = origin.isHonest() ? HONEST_FOR_ONE * rounds : rounds;
        int remarked = 0;
        for (int round = 0; round < runs; round++) {
            boolean seen =
                    survey(jars, origin, jars * 1_000_003L + origin.ordinal() * 20_011L + round).remarked().stream()
                            .anyMatch(origin.seenBy::contains);
            remarked += seen ? 1 : 0;
        }
        return new Tally(runs, remarked);
    }

    private static Walk survey(int jars, Origin origin, long seed) {
        SplittableRandom dice = new SplittableRandom(~seed);
        WalkedString string = new WalkedString(seed, jars);
        List<EarlierSurvey> earlier = new ArrayList<>();
        string.history(SURVEYS_BEFORE).forEach(series -> earlier.add(read(series, earlier.size(), origin.decimals)));
        double noisier = origin == Origin.SCATTERED ? 3 : origin == Origin.HONEST_NOISIER ? 1.5 : 1;
        List<Series> walked = string.walked(org.ohmstead.intake.forensics.Walk.inOrder(jars), noisier);
        EarlierSurvey now = read(walked, SURVEYS_BEFORE, origin.decimals);
        Walk walk = Walk.along(jars).recalling(earlier);
        double[] written = written(origin, now.ohmic(), earlier, dice);
        walk.link(0, text(now.linkMicroohms()[0][0], 1));
        for (int jar = 1; jar <= jars; jar++) {
            walk.ohmic(jar, text(written[jar - 1], origin.decimals))
                    .volts(jar, text(now.volts()[jar - 1], 3))
                    .link(jar, text(now.linkMicroohms()[jar][0], 1));
        }
        return walk;
    }

    private static double[] written(Origin origin, double[] read, List<EarlierSurvey> earlier, SplittableRandom dice) {
        double[] some = earlier.get(dice.nextInt(earlier.size())).ohmic();
        return switch (origin) {
            case COPIED -> some;
            case COPIED_TOUCHED -> each(some, value -> value * (1 + 0.003 * dice.nextGaussian()));
            case ROUNDED -> each(read, value -> rounded(value, 2));
            case TYPED -> typed(read, dice);
            default -> read;
        };
    }

    private static double[] typed(double[] read, SplittableRandom dice) {
        int[] before = {-1};
        return each(read, value -> {
            int digit = typedDigit(dice);
            if (digit == before[0] && dice.nextDouble() < AVOIDS_REPEATING) {
                digit = typedDigit(dice);
            }
            before[0] = digit;
            return Math.floor(value * 100) / 100 + digit / 1000.0;
        });
    }

    private static int typedDigit(SplittableRandom dice) {
        double left = dice.nextDouble();
        int digit = 0;
        while (digit < TYPED.length - 1 && left >= TYPED[digit]) {
            left -= TYPED[digit];
            digit++;
        }
        return digit;
    }

    private static EarlierSurvey read(List<Series> walked, int number, int decimals) {
        double[] ohmic = each(walked.get(0).values(), value -> rounded(Math.exp(value), decimals));
        double[] volts = each(walked.get(1).values(), value -> rounded(value, 3));
        double[][] links = Arrays.stream(walked.get(2).values())
                .mapToObj(value -> new double[] {rounded(Math.exp(value), 1)})
                .toArray(double[][]::new);
        Instant takenAt = Instant.parse("2024-11-18T10:00:00Z").plus(180L * number, ChronoUnit.DAYS);
        return new EarlierSurvey(takenAt, "", OhmicKind.IMPEDANCE, 60, 21, ohmic, volts, links);
    }

    private static double[] each(double[] values, DoubleUnaryOperator change) {
        return Arrays.stream(values).map(change).toArray();
    }

    private static double rounded(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .doubleValue();
    }

    private static String text(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
