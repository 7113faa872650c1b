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
        double[] slopes = TheilSen.slopes(pairs);
        int count = slopes.length;
        if (count == 0) {
            return new MedianSlope(Double.NaN, Interval.UNKNOWN);
        }
        Shelves shelves = shelved(slopes, pairs);
        double lower = shelves.at((count - 1) / 2);
        double slope = count % 2 == 1 ? lower : lower + 0.5 * (shelves.at(count / 2) - lower);
        double reach = quantile * Math.sqrt(MannKendall.variance(pairs));
        int rank = (int) Math.round((count - reach) / 2);
        return new MedianSlope(
                slope, rank < 1 ? Interval.EVERYTHING : new Interval(shelves.at(rank - 1), shelves.at(count - rank)));
    }

    /** The middle of all slopes lies among those over half the readings or so. */
    private static Shelves shelved(double[] slopes, Present.Pairs pairs) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        int half = pairs.count() / 2;
        for (int i = half; i < pairs.count(); i++) {
            double run = pairs.x()[i] - pairs.x()[i - half];
            if (run != 0) {
                double slope = (pairs.y()[i] - pairs.y()[i - half]) / run;
                low = Math.min(low, slope);
                high = Math.max(high, slope);
            }
        }
        return new Shelves(slopes, low, high);
    }
}
