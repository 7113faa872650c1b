package org.ohmstead.assessment.model.estate;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.statistics.NormalLogShare;

/**
 * The rise at which half of a type's jars have lost their capacity, learned from capacity tests. A jar fails at a rise r
 * with the chance Φ((r − limit)/differing); what is believed before the tests (the standard limit) gives way to them as
 * they come, so that few tests, or tests without any overlap, make no absurd limit. Worked out on a grid.
 *
 * @param logLimit logarithmic rise
 * @param low of its 95 % interval
 * @param high of its 95 % interval
 * @param spread how uncertain the limit of one jar is: how jars differ, and how well their middle is known
 */
public record CapacityLimit(double logLimit, double low, double high, double spread, int tested, int failed) {

    /** Fewer of either teach nothing. */
    public static final int LEAST_OF_EACH = 5;

    private static final int LIMITS = 121;
    private static final int WIDTHS = 41;
    private static final double REACH = 4;

    /** No test is taken for less likely than this. */
    private static final double LEAST_LOG_CHANCE = Math.log(1e-12);

    /**
     * What is believed before any test.
     *
     * @param limitSpread how uncertain the limit is
     * @param differing how jars differ in it
     * @param logDifferingSpread how uncertain that is, logarithmic
     */
    public record Belief(double limit, double limitSpread, double differing, double logDifferingSpread) {}

    /** @return null with too few tests */
    public static @Nullable CapacityLimit learn(List<TestedJar> tests, Belief before) {
        List<TestedJar> known =
                tests.stream().filter(test -> Double.isFinite(test.logRise())).toList();
        int failed = (int) known.stream().filter(TestedJar::failed).count();
        return failed < LEAST_OF_EACH || known.size() - failed < LEAST_OF_EACH ? null : of(known, failed, before);
    }

    private static CapacityLimit of(List<TestedJar> tests, int failed, Belief before) {
        double[] limits = grid(LIMITS, before.limit(), before.limitSpread());
        double[] widths = grid(WIDTHS, Math.log(before.differing()), before.logDifferingSpread());
        double[][] weight = weights(tests, before, limits, widths);
        double[] share = new double[LIMITS];
        double mean = 0;
        double square = 0;
        double differing = 0;
        for (int i = 0; i < LIMITS; i++) {
            for (int j = 0; j < WIDTHS; j++) {
                share[i] += weight[i][j];
                differing += weight[i][j] * Math.exp(2 * widths[j]);
            }
            mean += share[i] * limits[i];
            square += share[i] * limits[i] * limits[i];
        }
        double spread = Math.sqrt(differing + Math.max(0, square - mean * mean));
        return new CapacityLimit(
                mean, quantile(limits, share, .025), quantile(limits, share, .975), spread, tests.size(), failed);
    }

    private static double[] grid(int points, double middle, double deviation) {
        double[] values = new double[points];
        for (int i = 0; i < points; i++) {
            values[i] = middle + deviation * REACH * (2.0 * i / (points - 1) - 1);
        }
        return values;
    }

    /** Shares of belief, adding up to one. */
    private static double[][] weights(List<TestedJar> tests, Belief before, double[] limits, double[] widths) {
        double[][] logs = new double[limits.length][widths.length];
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < limits.length; i++) {
            for (int j = 0; j < widths.length; j++) {
                double a = (limits[i] - before.limit()) / before.limitSpread();
                double b = (widths[j] - Math.log(before.differing())) / before.logDifferingSpread();
                logs[i][j] = logLikelihood(tests, limits[i], Math.exp(widths[j])) - (a * a + b * b) / 2;
                best = Math.max(best, logs[i][j]);
            }
        }
        double sum = 0;
        for (double[] row : logs) {
            for (int j = 0; j < row.length; j++) {
                row[j] = Math.exp(row[j] - best);
                sum += row[j];
            }
        }
        for (double[] row : logs) {
            for (int j = 0; j < row.length; j++) {
                row[j] /= sum;
            }
        }
        return logs;
    }

    private static double logLikelihood(List<TestedJar> tests, double limit, double differing) {
        double sum = 0;
        for (TestedJar test : tests) {
            double over = (test.logRise() - limit) / differing;
            sum += Math.max(LEAST_LOG_CHANCE, NormalLogShare.below(test.failed() ? over : -over));
        }
        return sum;
    }

    /** Between two points of the grid the belief is spread evenly. */
    private static double quantile(double[] values, double[] share, double wanted) {
        double below = 0;
        int i = 0;
        while (below + share[i] < wanted) {
            below += share[i];
            i++;
        }
        double step = values[1] - values[0];
        return values[i] - step / 2 + step * (wanted - below) / share[i];
    }
}
