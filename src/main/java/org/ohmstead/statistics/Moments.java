package org.ohmstead.statistics;

/**
 * Mean, standard deviation and lag-one autocorrelation, each in two passes with a correction for rounding: Chan, Golub
 * and LeVeque, "Algorithms for computing the sample variance", The American Statistician 37 (1983) 242-247.
 *
 * <p>{@code NaN} is missing and skipped (for the autocorrelation the values on either side then count as neighbours).
 */
public final class Moments {

    private Moments() {}

    /** The arithmetic mean; {@code NaN} of nothing. */
    public static double mean(double[] values) {
        double[] present = Present.in(values);
        double rough = sum(present) / present.length;
        double rest = 0;
        for (double value : present) {
            rest += value - rough;
        }
        return rough + rest / present.length;
    }

    /** The standard deviation with n - 1 as divisor; {@code NaN} of fewer than two values. */
    public static double standardDeviation(double[] values) {
        double[] present = Present.in(values);
        if (present.length < 2) {
            return Double.NaN;
        }
        return Math.sqrt(sumOfSquares(present, mean(present)) / (present.length - 1));
    }

    /** The sum of products of neighbours' deviations over the sum of squares; {@code NaN} where that is 0. */
    public static double lagOneAutocorrelation(double[] values) {
        double[] present = Present.in(values);
        double mean = mean(present);
        double products = 0;
        for (int i = 1; i < present.length; i++) {
            products += (present[i] - mean) * (present[i - 1] - mean);
        }
        double squares = sumOfSquares(present, mean);
        return squares > 0 ? products / squares : Double.NaN;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    private static double sumOfSquares(double[] values, double mean) {
        double squares = 0;
        double rest = 0;
        for (double value : values) {
            double off = value - mean;
            squares += off * off;
            rest += off;
        }
        return squares - rest * rest / values.length;
    }
}
