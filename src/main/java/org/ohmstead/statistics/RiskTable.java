package org.ohmstead.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * At each time at which something failed: how many were still at risk and how many failed.
 *
 * @param times rising, each once
 * @param atRisk units not failed nor lost before that time
 * @param failures at that time
 */
record RiskTable(double[] times, double[] atRisk, double[] failures) {

    /** Builds the table; units with a {@code NaN} time are skipped. */
    static RiskTable of(double[] times, boolean[] failed) {
        double[] steps = failureTimes(times, failed);
        return of(times, failed, steps);
    }

    /** Counts at given times, for comparing groups at common steps. */
    static RiskTable of(double[] times, boolean[] failed, double[] steps) {
        double[] atRisk = new double[steps.length];
        double[] failures = new double[steps.length];
        for (int i = 0; i < times.length; i++) {
            for (int step = 0; step < steps.length && times[i] >= steps[step]; step++) {
                atRisk[step]++;
                if (failed[i] && times[i] == steps[step]) {
                    failures[step]++;
                }
            }
        }
        return new RiskTable(steps, atRisk, failures);
    }

    /** For rows that stand for several units each. */
    static RiskTable counted(double[] times, boolean[] failed, double[] counts) {
        double[] steps = failureTimes(times, failed);
        double[] atRisk = new double[steps.length];
        double[] failures = new double[steps.length];
        for (int i = 0; i < times.length; i++) {
            for (int step = 0; step < steps.length && times[i] >= steps[step]; step++) {
                atRisk[step] += counts[i];
                if (failed[i] && times[i] == steps[step]) {
                    failures[step] += counts[i];
                }
            }
        }
        return new RiskTable(steps, atRisk, failures);
    }

    static double[] failureTimes(double[] times, boolean[] failed) {
        return IntStream.range(0, times.length)
                .filter(i -> failed[i] && !Double.isNaN(times[i]))
                .mapToDouble(i -> times[i])
                .sorted()
                .distinct()
                .toArray();
    }

    /** The sub-table of one group at this table's times. */
    RiskTable group(double[] all, boolean[] failed, int[] groups, int group) {
        int[] members =
                IntStream.range(0, all.length).filter(i -> groups[i] == group).toArray();
        double[] own = Arrays.stream(members).mapToDouble(i -> all[i]).toArray();
        boolean[] ownFailed = new boolean[members.length];
        for (int i = 0; i < members.length; i++) {
            ownFailed[i] = failed[members[i]];
        }
        return of(own, ownFailed, times);
    }
}
