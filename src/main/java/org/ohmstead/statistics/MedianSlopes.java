package org.ohmstead.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The slopes of {@link TheilSen} with their intervals at one level, for many short rows of pairs: the same numbers without
 * the intercepts, and no slope is put in order that nobody asks for.
 */
public final class MedianSlopes {

    private final double quantile;

    /** @param level of the intervals, for example 0.8 */
    public MedianSlopes(double level) {
        this.quantile = new NormalDistribution().inverseCumulativeProbability(0.5 + level / 2);
    }

    /**
     * The median slope with its interval.
     *
     * @param slope NaN when no two pairs differ in x
     */
    public record MedianSlope(double slope, Interval interval) {}

    /** Of the pairs that are there. */
    public MedianSlope of(double[] x, double[] y) {
        Present.Pairs pairs = Present.pairs(x, y);
        int n = pairs.count();
        long[] keys = new long[n * (n - 1) / 2];
        int count = slopes(pairs, keys);
        if (count == 0) {
            return new MedianSlope(Double.NaN, Interval.UNKNOWN);
        }
        double reach = quantile * Math.sqrt(MannKendall.variance(pairs));
        return settled(keys, count, (int) Math.round((count - reach) / 2));
    }

    /** @param rank of the lower end counted from below, and of the upper one from above; less than 1 when there is none */
    private static MedianSlope settled(long[] keys, int count, int rank) {
        int below = (count - 1) / 2;
        int above = count / 2;
        Ranks.find(keys, 0, count, below);
        if (above > below) {
            Ranks.findLeast(keys, above, count);
        }
        double lower = Ranks.number(keys[below]);
        double slope = above == below ? lower : lower + 0.5 * (Ranks.number(keys[above]) - lower);
        return new MedianSlope(slope, rank < 1 ? Interval.EVERYTHING : interval(keys, count, rank));
    }

    /** The middle stands already, so that each end is looked for on its own side of it. */
    private static Interval interval(long[] keys, int count, int rank) {
        int lower = rank - 1;
        int upper = count - rank;
        if (lower < (count - 1) / 2) {
            Ranks.find(keys, 0, (count - 1) / 2, lower);
        }
        if (upper > count / 2) {
            Ranks.find(keys, count / 2 + 1, count, upper);
        }
        return new Interval(Ranks.number(keys[lower]), Ranks.number(keys[upper]));
    }

    private static int slopes(Present.Pairs pairs, long[] keys) {
        double[] x = pairs.x();
        double[] y = pairs.y();
        int count = 0;
        for (int i = 1; i < x.length; i++) {
            for (int j = 0; j < i; j++) {
                double run = x[i] - x[j];
                if (run != 0) {
                    keys[count++] = Ranks.key((y[i] - y[j]) / run);
                }
            }
        }
        return count;
    }
}
