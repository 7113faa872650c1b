package org.ohmstead.intake.check;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.ohmstead.kernel.OhmicKind;

/** An invented string whose jars differ by 4 % and read within 1 %, with volts and straps of their own. Seeded. */
final class RememberedString {

    private final SplittableRandom random;
    private final double[] ohmic;
    private final double[] volts;
    private final double[] links;

    RememberedString(long seed, int jars) {
        random = new SplittableRandom(seed);
        ohmic = scattered(jars, 0.412, 0.016);
        volts = scattered(jars, 2.25, 0.010);
        links = scattered(jars + 1, 24, 2);
    }

    List<EarlierSurvey> surveys(int count) {
        List<EarlierSurvey> surveys = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            Instant takenAt = Instant.parse("2024-11-18T10:00:00Z").plus(90L * k, ChronoUnit.DAYS);
            double[] strapped = read(links, 0.03);
            double[][] perLink = Arrays.stream(strapped)
                    .mapToObj(value -> new double[] {value})
                    .toArray(double[][]::new);
            surveys.add(new EarlierSurvey(
                    takenAt, "", OhmicKind.IMPEDANCE, 60, 21, rounded(read(ohmic, 0.01)), read(volts, 0.001), perLink));
        }
        return surveys;
    }

    /** Written down along a walk: row by row, the jar that was really read. */
    Walk walked(Walk walk, int... jarOfRow) {
        EarlierSurvey now = surveys(1).get(0);
        for (int row = 1; row <= jarOfRow.length; row++) {
            int jar = jarOfRow[row - 1];
            walk.ohmic(row, text("%.4f", now.ohmic()[jar - 1]))
                    .volts(row, text("%.3f", now.volts()[jar - 1]))
                    .link(row, text("%.1f", now.linkMicroohms()[jar][0]));
        }
        return walk;
    }

    static int[] inOrder(int jars) {
        return IntStream.rangeClosed(1, jars).toArray();
    }

    private double[] read(double[] truth, double share) {
        return Arrays.stream(truth)
                .map(value -> value * (1 + share * random.nextGaussian()))
                .toArray();
    }

    private static double[] rounded(double[] ohmic) {
        return Arrays.stream(ohmic)
                .map(value -> Math.rint(value * 10_000) / 10_000)
                .toArray();
    }

    private double[] scattered(int count, double middle, double deviation) {
        return IntStream.range(0, count)
                .mapToDouble(k -> middle + deviation * random.nextGaussian())
                .toArray();
    }

    private static String text(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
