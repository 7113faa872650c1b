package org.ohmstead.statistics;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The median of the slopes between all pairs: Theil, Proc. Kon. Ned. Akad. Wet. A 53 (1950); interval by ranks after
 * Sen, "Estimates of the regression coefficient based on Kendall's tau", JASA 63 (1968) 1379-1389.
 *
 * <p>Pairs with a {@code NaN} are skipped, as are slopes between equal x. No slope left gives {@code NaN} for slope and
 * intercepts and an unknown interval.
 *
 * @param slope in y per x
 * @param intercept the median of y - slope·x
 * @param conoverIntercept median(y) - slope·median(x), the form of Conover, Practical Nonparametric Statistics
 * @param slopes all slopes between pairs, the lower half first
 * @param scoreVariance tie-corrected variance of Kendall's S, which sets the interval
 */
public record TheilSen(double slope, double intercept, double conoverIntercept, double[] slopes, double scoreVariance) {

    /** Fits a line through the pairs. */
    public static TheilSen of(double[] x, double[] y) {
        Present.Pairs pairs = Present.pairs(x, y);
        double[] slopes = slopes(pairs);
        double slope = Quantiles.settleMedian(slopes);
        double[] rest = new double[pairs.count()];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = pairs.y()[i] - slope * pairs.x()[i];
        }
        double conover = Quantiles.median(pairs.y()) - slope * Quantiles.median(pairs.x());
        double variance = MannKendall.variance(pairs);
        return new TheilSen(slope, Quantiles.median(rest), conover, slopes, variance);
    }

    /**
     * The interval between the order statistics (N - C)/2 and (N + C)/2 + 1 of the N slopes, rounded to whole ranks, C
     * being the normal quantile times the standard deviation of S. With too few pairs for the level the ends are
     * infinite: that is the honest answer, not an error.
     *
     * @param level for example 0.8
     */
    public Interval slopeInterval(double level) {
        if (slopes.length == 0) {
            return Interval.UNKNOWN;
        }
        double reach =
                new NormalDistribution().inverseCumulativeProbability(0.5 + level / 2) * Math.sqrt(scoreVariance);
        int rank = (int) Math.round((slopes.length - reach) / 2);
        return rank < 1 ? Interval.EVERYTHING : between(rank - 1, slopes.length - rank);
    }

    /** Both ranks or none lie at the middle, on whose sides the halves have been settled. */
    private Interval between(int lower, int upper) {
        double[] settled = slopes.clone();
        int middle = settled.length / 2;
        if (lower < middle) {
            Ranks.settleWithin(settled, 0, middle, lower);
        }
        if (upper > middle) {
            Ranks.settleWithin(settled, middle + 1, settled.length, upper);
        }
        return new Interval(settled[lower], settled[upper]);
    }

    /** The height of the line at x. */
    public double at(double x) {
        return intercept + slope * x;
    }

    /** Between all pairs that differ in x. */
    static double[] slopes(Present.Pairs pairs) {
        double[] x = pairs.x();
        double[] y = pairs.y();
        int n = pairs.count();
        double[] slopes = new double[n * (n - 1) / 2];
        int count = 0;
        for (int i = 1; i < n; i++) {
            for (int j = 0; j < i; j++) {
                double run = x[i] - x[j];
                if (run != 0) {
                    slopes[count++] = (y[i] - y[j]) / run;
                }
            }
        }
        return count == slopes.length ? slopes : Arrays.copyOf(slopes, count);
    }
}
