package org.ohmstead.intake.forensics;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Injects each slip at random places into invented strings and prints what is noticed, as a Markdown table. Started by
 * {@code ops/bench/walks}; takes the number of strings per cell.
 */
public final class WalkContest {

    private static final int[] SIZES = {12, 24, 60, 120, 240};
    private static final int SURVEYS_BEFORE = 3;

    private final int rounds;

    WalkContest(int rounds) {
        this.rounds = rounds;
    }

    public static void main(String[] args) {
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 500;
        new WalkContest(rounds).print();
    }

    /** What was made of one slip, over many strings. */
    record Tally(int runs, int noticed, int located, int mistaken) {

        String row(String name) {
            return String.format(
                    Locale.ROOT,
                    "| %s | %.1f %% | %s | %.1f %% |",
                    name,
                    100.0 * noticed / runs,
                    noticed == 0 ? "–" : String.format(Locale.ROOT, "%.1f %%", 100.0 * located / noticed),
                    100.0 * mistaken / runs);
        }
    }

    /** A slip to inject; {@code OTHER_STRING} and {@code CLEAN} need no place. */
    enum Slip {
        CLEAN,
        REVERSED,
        SKIPPED,
        READ_TWICE,
        NEIGHBOURS_SWAPPED,
        OTHERS_SWAPPED,
        OTHER_STRING
    }

    private void print() {
        for (boolean joined : new boolean[] {false, true}) {
            System.out.println(joined ? "\nOhmic values, volts and links:\n" : "\nOhmic values alone:\n");
            System.out.println("| jars, slip | noticed | of these located within ±1 | taken for something else |");
            System.out.println("|---|---|---|---|");
            for (int jars : SIZES) {
                for (Slip slip : Slip.values()) {
                    System.out.println(run(jars, slip, joined).row(jars + ", " + words(slip)));
                }
            }
        }
    }

    Tally run(int jars, Slip slip, boolean joined) {
        int noticed = 0;
        int located = 0;
        int mistaken = 0;
        int runs = slip == Slip.CLEAN ? 4 * rounds : rounds;
        for (int round = 0; round < runs; round++) {
            long seed = jars * 1_000_003L + slip.ordinal() * 10_007L + round;
            SplittableRandom dice = new SplittableRandom(~seed);
            Walk walk = walk(slip, jars, dice);
            WalkVerdict verdict = judge(seed, walk, slip == Slip.OTHER_STRING, joined);
            boolean right = isRight(slip, walk, verdict);
            noticed += right && slip != Slip.CLEAN ? 1 : 0;
            located += right && slip != Slip.CLEAN && Math.abs(verdict.walk().at() - walk.at()) <= 1 ? 1 : 0;
            mistaken += !right && !verdict.isInOrder() ? 1 : 0;
        }
        return new Tally(runs, noticed, located, mistaken);
    }

    private static WalkVerdict judge(long seed, Walk walk, boolean swapStrings, boolean joined) {
        WalkedString own = new WalkedString(seed, walk.jars());
        WalkedString other = new WalkedString(seed + 500_000_000L, walk.jars());
        Fingerprint ours = fingerprint(walk.jars(), own.history(SURVEYS_BEFORE), joined);
        Fingerprint theirs = fingerprint(walk.jars(), other.history(SURVEYS_BEFORE), joined);
        List<Series> survey = (swapStrings ? other : own).walked(walk);
        return WalkJudge.judge(ours, Map.of("other", theirs), channels(survey, joined));
    }

    private static Fingerprint fingerprint(int jars, List<List<Series>> history, boolean joined) {
        return Fingerprint.of(
                jars, history.stream().map(s -> channels(s, joined)).toList());
    }

    private static List<Series> channels(List<Series> survey, boolean joined) {
        return joined ? survey : survey.subList(0, 1);
    }

    private static Walk walk(Slip slip, int jars, SplittableRandom dice) {
        int jar = 1 + dice.nextInt(jars - 1);
        return switch (slip) {
            case CLEAN, OTHER_STRING -> Walk.inOrder(jars);
            case REVERSED -> Walk.fromTheOtherEnd(jars);
            case SKIPPED -> Walk.skipping(jar, jars);
            case READ_TWICE -> Walk.readingTwice(jar, jars);
            case NEIGHBOURS_SWAPPED -> Walk.swapping(jar, jar + 1, jars);
            case OTHERS_SWAPPED -> {
                int other = 1 + dice.nextInt(jars);
                yield Walk.swapping(Math.min(jar, other), Math.max(jar, other) + (jar == other ? 1 : 0), jars);
            }
        };
    }

    private static boolean isRight(Slip slip, Walk walk, WalkVerdict verdict) {
        return switch (slip) {
            case CLEAN -> verdict.isInOrder();
            case OTHER_STRING -> verdict.otherString() != null;
            default -> verdict.otherString() == null && verdict.walk().kind() == walk.kind();
        };
    }

    private static String words(Slip slip) {
        return slip.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
