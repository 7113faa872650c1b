package org.ohmstead.capacity.model;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A discharge as it is shown: the string and the jars that came down lowest, in fewer rows where there are many.
 *
 * @param minutes since current first flowed
 * @param lowest the lowest last
 */
public record DischargeCurve(double[] minutes, double[] amps, double[] stringVolts, List<Jar> lowest) {

    /** Of a jar, one per row, NaN where not read. */
    public record Jar(int position, double[] volts) {}

    /**
     * @param jars how many of the lowest are shown
     * @param most rows that are shown; the first and the last one always are
     */
    public static DischargeCurve of(DischargeRecord all, int jars, int most) {
        int first = DischargeFigures.firstWithCurrent(all);
        int last = DischargeFigures.lastWithCurrent(all);
        int[] rows = spread(first, last, most);
        List<Jar> lowest = IntStream.range(0, all.positions())
                .boxed()
                .filter(jar -> Double.isFinite(end(all, jar, first, last)))
                .sorted(Comparator.<Integer>comparingDouble(jar -> end(all, jar, first, last))
                        .reversed())
                .skip(Math.max(0, read(all, first, last) - jars))
                .map(jar -> new Jar(jar + 1, picked(all.jar(jar), rows)))
                .toList();
        double[] minutes = picked(all.minutes(), rows);
        double start = all.minutes()[first];
        for (int i = 0; i < minutes.length; i++) {
            minutes[i] -= start;
        }
        return new DischargeCurve(minutes, picked(all.amps(), rows), picked(all.stringVolts(), rows), lowest);
    }

    private static long read(DischargeRecord all, int first, int last) {
        return IntStream.range(0, all.positions())
                .filter(jar -> Double.isFinite(end(all, jar, first, last)))
                .count();
    }

    /** The last that was read of a jar. */
    private static double end(DischargeRecord all, int jar, int first, int last) {
        for (int row = last; row >= first; row--) {
            if (Double.isFinite(all.jarVolts()[row][jar])) {
                return all.jarVolts()[row][jar];
            }
        }
        return Double.NaN;
    }

    private static int[] spread(int first, int last, int most) {
        int rows = last - first + 1;
        return rows <= most
                ? IntStream.rangeClosed(first, last).toArray()
                : IntStream.range(0, most)
                        .map(i -> first + (int) Math.round((double) i * (rows - 1) / (most - 1)))
                        .toArray();
    }

    private static double[] picked(double[] values, int[] rows) {
        return IntStream.of(rows).mapToDouble(row -> values[row]).toArray();
    }
}
