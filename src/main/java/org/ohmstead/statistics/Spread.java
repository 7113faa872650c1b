package org.ohmstead.statistics;

import java.util.Arrays;

/**
 * Robust measures of spread, each scaled to estimate the standard deviation of normal data.
 *
 * <p>{@code NaN} is missing and skipped. Nothing left gives {@code NaN}; one value, or all equal, gives 0. More than half
 * equal also gives 0 for the median absolute deviation: a caller who divides by it must guard.
 */
public final class Spread {

    /** Makes the median absolute deviation of normal data their standard deviation: 1 / Φ⁻¹(3/4), as rounded in R. */
    public static final double MAD_SCALE = 1.4826;

    private Spread() {}

    /** The median absolute deviation from the median, times {@link #MAD_SCALE}. */
    public static double mad(double[] values) {
        return MAD_SCALE * rawMad(values);
    }

    /** The median absolute deviation from the median, unscaled. */
    public static double rawMad(double[] values) {
        double[] present = Present.in(values);
        double centre = Quantiles.median(present);
        for (int i = 0; i < present.length; i++) {
            present[i] = Math.abs(present[i] - centre);
        }
        return Quantiles.median(present);
    }

    /** S_n of Rousseeuw and Croux, "Alternatives to the median absolute deviation", JASA 88 (1993) 1273-1283. */
    public static double sn(double[] values) {
        double[] present = Present.in(values);
        return present.length == 0 ? Double.NaN : SmallSample.sn(present.length) * rawSn(present);
    }

    /** Q_n of the same paper, with the finite-sample corrections that robustbase 0.92 and later use. */
    public static double qn(double[] values) {
        double[] present = Present.in(values);
        return present.length == 0 ? Double.NaN : SmallSample.qn(present.length) * rawQn(present);
    }

    /** The low median over units of the high median of distances to the others, unscaled; no missing values. */
    static double rawSn(double[] values) {
        int n = values.length;
        double[] typical = new double[n];
        double[] distance = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                distance[j] = Math.abs(values[i] - values[j]);
            }
            Arrays.sort(distance);
            typical[i] = distance[n / 2];
        }
        Arrays.sort(typical);
        return typical[(n + 1) / 2 - 1];
    }

    /** The h(h-1)/2-th smallest of all distances between two units, h = n/2 + 1, unscaled; no missing values. */
    static double rawQn(double[] values) {
        int n = values.length;
        if (n == 1) {
            return 0;
        }
        double[] distance = new double[n * (n - 1) / 2];
        int count = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                distance[count++] = Math.abs(values[i] - values[j]);
            }
        }
        Arrays.sort(distance);
        int half = n / 2 + 1;
        return distance[half * (half - 1) / 2 - 1];
    }
}
