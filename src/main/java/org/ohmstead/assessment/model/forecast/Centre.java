package org.ohmstead.assessment.model.forecast;

import java.util.Arrays;

/**
 * The centre of one survey: a Huber mean, weighted by how well each unit is known.
 *
 * @param value NaN when nothing was read
 * @param variance of the centre
 */
record Centre(double value, double variance, int readings) {
    private static final double HUBER_BEND = 1.345;
    private static final double MAD_TO_SIGMA = 1.4826;
    private static final int ROUNDS = 12;

    /** Values may be NaN; variances belong to them one by one. */
    static Centre of(double[] values, double[] variances) {
        double[] finite =
                Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
        if (finite.length == 0) {
            return new Centre(Double.NaN, Double.NaN, 0);
        }
        double middle = median(finite);
        double scale = scale(finite, middle);
        double value = middle;
        for (int round = 0; round < ROUNDS; round++) {
            value = weightedMean(values, variances, value, scale);
        }
        return new Centre(value, variance(scale, values, variances), finite.length);
    }

    private static double scale(double[] finite, double middle) {
        double[] apart =
                Arrays.stream(finite).map(v -> Math.abs(v - middle)).sorted().toArray();
        return Math.max(1e-3, MAD_TO_SIGMA * median(apart));
    }

    /** By the spread between units, but never less than their own uncertainty allows. */
    private static double variance(double scale, double[] values, double[] variances) {
        double precision = 0;
        int readings = 0;
        for (int i = 0; i < values.length; i++) {
            if (Double.isFinite(values[i])) {
                precision += 1 / variances[i];
                readings++;
            }
        }
        return Math.max(1.1 * scale * scale / readings, 1 / precision);
    }

    private static double weightedMean(double[] values, double[] variances, double around, double scale) {
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < values.length; i++) {
            if (Double.isFinite(values[i])) {
                double apart = Math.abs(values[i] - around) / scale;
                double weight = Math.min(1, HUBER_BEND / apart) / variances[i];
                sum += weight * values[i];
                weights += weight;
            }
        }
        return sum / weights;
    }

    static double median(double[] sorted) {
        int n = sorted.length;
        return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
    }

    /** Median of the finite values, NaN when there are none. */
    static double medianOf(double[] values) {
        double[] finite =
                Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
        return finite.length == 0 ? Double.NaN : median(finite);
    }
}
