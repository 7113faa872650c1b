package org.ohmstead.assessment.model.forecast;

import java.util.Arrays;
import org.ohmstead.statistics.Quantiles;

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
        double[] read = new double[values.length];
        double[] ofRead = new double[values.length];
        int count = 0;
        for (int i = 0; i < values.length; i++) {
            if (Double.isFinite(values[i])) {
                read[count] = values[i];
                ofRead[count++] = variances[i];
            }
        }
        return count == 0
                ? new Centre(Double.NaN, Double.NaN, 0)
                : ofRead(Arrays.copyOf(read, count), Arrays.copyOf(ofRead, count));
    }

    private static Centre ofRead(double[] values, double[] variances) {
        double value = Quantiles.median(values);
        double scale = scale(values, value);
        double[] precisions = new double[variances.length];
        for (int i = 0; i < precisions.length; i++) {
            precisions[i] = 1 / variances[i];
        }
        for (int round = 0; round < ROUNDS; round++) {
            double next = weightedMean(values, variances, precisions, value, scale);
            if (next == value) {
                break;
            }
            value = next;
        }
        return new Centre(value, variance(scale, precisions), values.length);
    }

    private static double scale(double[] values, double middle) {
        double[] apart = new double[values.length];
        for (int i = 0; i < apart.length; i++) {
            apart[i] = Math.abs(values[i] - middle);
        }
        return Math.max(1e-3, MAD_TO_SIGMA * Quantiles.median(apart));
    }

    /** By the spread between units, but never less than their own uncertainty allows. */
    private static double variance(double scale, double[] precisions) {
        double precision = 0;
        for (double one : precisions) {
            precision += one;
        }
        return Math.max(1.1 * scale * scale / precisions.length, 1 / precision);
    }

    /** Most values are near and weigh what they are worth; the others less, the farther off they are. */
    private static double weightedMean(
            double[] values, double[] variances, double[] precisions, double around, double scale) {
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < values.length; i++) {
            double apart = Math.abs(values[i] - around) / scale;
            double weight = apart <= HUBER_BEND ? precisions[i] : Math.min(1, HUBER_BEND / apart) / variances[i];
            sum += weight * values[i];
            weights += weight;
        }
        return sum / weights;
    }
}
