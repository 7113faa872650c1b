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
 * @param slopes all slopes between pairs, sorted
 * @param scoreVariance tie-corrected variance of Kendall's S, which sets the interval
 */
public record TheilSen(double slope, double intercept, double conoverIntercept, double[] slopes, double scoreVariance) {

    /** Fits a line through the pairs. */
    public static TheilSen of(double[] x, double[] y) {
        Present.Pairs pairs = Present.pairs(x, y);
        double[] slopes = sortedSlopes(pairs);
        double slope = Quantiles.ofSorted(slopes, 0.5);
        double[] rest = new double[pairs.count()];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = pairs.y()[i] - slope * pairs.x()[i];
        }
        double conover = Quantiles.median(pairs.y()) - slope * Quantiles.median(pairs.x());
        double variance = MannKendall.of(pairs.x(), pairs.y()).variance();
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
        return rank < 1 ? Interval.EVERYTHING : new Interval(slopes[rank - 1], slopes[slopes.length - rank]);
    }

    /** The height of the line at x. */
    public double at(double x) {
        return intercept + slope * x;
    }

    private static double[] sortedSlopes(Present.Pairs pairs) {
        int n = pairs.count();
        double[] slopes = new double[n * (n - 1) / 2];
        int count = 0;
        for (int i = 1; i < n; i++) {
            for (int j = 0; j < i; j++) {
                double run = pairs.x()[i] - pairs.x()[j];
                if (run != 0) {
                    slopes[count++] = (pairs.y()[i] - pairs.y()[j]) / run;
                }
            }
        }
        double[] found = Arrays.copyOf(slopes, count);
        Arrays.sort(found);
        return found;
    }
}
