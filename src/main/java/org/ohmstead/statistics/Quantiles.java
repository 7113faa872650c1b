package org.ohmstead.statistics;

/**
 * Sample quantiles by linear interpolation between order statistics: definition 7 of Hyndman and Fan, "Sample quantiles
 * in statistical packages", The American Statistician 50 (1996) 361-365.
 *
 * <p>{@code NaN} is missing and skipped. Nothing left gives {@code NaN}; one value is every quantile of itself.
 */
public final class Quantiles {

    private Quantiles() {}

    /** The middle value, or the mean of the middle two. */
    public static double median(double[] values) {
        return settleMedian(Present.in(values));
    }

    /** Of numbers none of which is missing; leaves the lower half before the middle and the upper half after it. */
    static double settleMedian(double[] present) {
        if (present.length > 0) {
            Ranks.settle(present, (present.length - 1) / 2, present.length / 2);
        }
        return ofSorted(present, 0.5);
    }

    /**
     * The value below which the given share lies.
     *
     * @param share from 0 (least) to 1 (greatest)
     * @throws IllegalArgumentException if the share lies outside 0 to 1
     */
    public static double quantile(double[] values, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("a share lies between 0 and 1, not " + share);
        }
        return ofSorted(Present.sorted(values), share);
    }

    /** What stands at the ranks beside that share must stand where sorting puts it. */
    static double ofSorted(double[] sorted, double share) {
        if (sorted.length == 0) {
            return Double.NaN;
        }
        double place = share * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        double weight = place - below;
        return weight == 0 ? sorted[below] : sorted[below] + weight * (sorted[above] - sorted[below]);
    }
}
