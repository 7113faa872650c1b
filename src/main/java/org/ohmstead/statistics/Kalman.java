package org.ohmstead.statistics;

import org.hipparchus.util.FastMath;

/**
 * One step of the Kalman filter for a small state with scalar readings: Kalman, J. Basic Eng. 82 (1960) 35-45; Durbin and
 * Koopman, Time Series Analysis by State Space Methods (2001), chapter 4.
 *
 * <p>A state of n numbers is a mean of length n and a covariance of n·n numbers row by row. Both are changed in place, so
 * that a filter over many units allocates next to nothing. Covariances stay exactly symmetric.
 */
public final class Kalman {

    private static final double LOG_TWO_PI = FastMath.log(2 * FastMath.PI);

    private Kalman() {}

    /**
     * Moves a state on: mean = F·mean, covariance = F·covariance·F' + Q.
     *
     * @param mean changed
     * @param covariance changed
     * @param transition F, row by row
     * @param noise Q, row by row, symmetric
     */
    public static void predict(double[] mean, double[] covariance, double[] transition, double[] noise) {
        int n = mean.length;
        double[] moved = new double[n];
        double[] half = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                double f = transition[i * n + k];
                moved[i] += f * mean[k];
                for (int j = 0; f != 0 && j < n; j++) {
                    half[i * n + j] += f * covariance[k * n + j];
                }
            }
        }
        System.arraycopy(moved, 0, mean, 0, n);
        sandwich(half, transition, noise, covariance, n);
    }

    /** covariance = half·F' + Q, of which the upper half is worked out and mirrored. */
    private static void sandwich(double[] half, double[] transition, double[] noise, double[] covariance, int n) {
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                double sum = noise[i * n + j];
                for (int k = 0; k < n; k++) {
                    sum += half[i * n + k] * transition[j * n + k];
                }
                covariance[i * n + j] = sum;
                covariance[j * n + i] = sum;
            }
        }
    }

    /**
     * Takes in a reading = h·state + noise.
     *
     * @param mean changed
     * @param covariance changed
     * @param h how the reading sees the state
     * @param reading {@code NaN} changes nothing
     * @param variance of the reading's noise
     * @return the log density of the reading as foreseen; 0 for a missing one
     */
    public static double update(double[] mean, double[] covariance, double[] h, double reading, double variance) {
        if (Double.isNaN(reading)) {
            return 0;
        }
        int n = mean.length;
        double[] seen = new double[n];
        double total = variance;
        double innovation = reading;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                seen[i] += covariance[i * n + j] * h[j];
            }
            total += h[i] * seen[i];
            innovation -= h[i] * mean[i];
        }
        for (int i = 0; i < n; i++) {
            mean[i] += seen[i] * (innovation / total);
            for (int j = 0; j < n; j++) {
                covariance[i * n + j] -= seen[i] * seen[j] / total;
            }
        }
        return logDensity(innovation, total);
    }

    /** The log density of a normal number with mean 0. */
    public static double logDensity(double innovation, double variance) {
        return -0.5 * (LOG_TWO_PI + FastMath.log(variance) + innovation * innovation / variance);
    }

    /** The value a reading with this view of the state is expected to have. */
    public static double expected(double[] mean, double[] h) {
        double sum = 0;
        for (int i = 0; i < mean.length; i++) {
            sum += h[i] * mean[i];
        }
        return sum;
    }

    /** The variance of what that view sees, without the reading's noise. */
    public static double seenVariance(double[] covariance, double[] h) {
        int n = h.length;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                sum += h[i] * covariance[i * n + j] * h[j];
            }
        }
        return sum;
    }
}
