package org.ohmstead.intake.check;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.ohmstead.statistics.Quantiles;

/** How far the jars moved against each other between two walks: what all of them have in common is taken out. */
final class Movement {

    private static final double MAD_TO_DEVIATION = 1.4826;

    private Movement() {}

    /** Robust standard deviation of the jars' changes about their median, as a share of the value; NaN without any. */
    static double between(double[] before, double[] after) {
        double[] changes = both(before, after)
                .mapToDouble(i -> Math.log(after[i] / before[i]))
                .toArray();
        double middle = Quantiles.median(changes);
        return MAD_TO_DEVIATION
                * Quantiles.median(Arrays.stream(changes)
                        .map(change -> Math.abs(change - middle))
                        .toArray());
    }

    /** Indexes of the jars that were read both times. */
    static IntStream both(double[] one, double[] other) {
        return IntStream.range(0, Math.min(one.length, other.length)).filter(i -> one[i] > 0 && other[i] > 0);
    }

    static int count(double[] one, double[] other) {
        return (int) both(one, other).count();
    }
}
