package org.ohmstead.statistics;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A fit by ordinary or weighted least squares, by Householder QR on columns scaled to unit length.
 *
 * <p>Rows with a {@code NaN} are skipped. Fewer rows than coefficients, or columns that depend on each other (all x
 * equal), give {@code NaN} throughout; as many rows as coefficients give coefficients, but {@code NaN} for every error
 * and interval.
 *
 * @param coefficients one a column
 * @param unscaled (X'X)⁻¹, row by row: times the residual variance it is the covariance of the coefficients
 * @param residualDeviation the square root of the residual sum of squares over the degrees of freedom
 * @param degreesOfFreedom rows less coefficients
 */
public record LeastSquares(double[] coefficients, double[][] unscaled, double residualDeviation, int degreesOfFreedom) {

    /** Fits intercept and slope, in this order. */
    public static LeastSquares line(double[] x, double[] y) {
        return fit(Design.line(x), y);
    }

    /**
     * Fits y as a sum of coefficients times columns; no intercept is added.
     *
     * @param design one row an observation
     */
    public static LeastSquares fit(double[][] design, double[] y) {
        double[] equal = new double[y.length];
        Arrays.fill(equal, 1);
        return weighted(design, y, equal);
    }

    /**
     * The same with a weight an observation, inverse to its variance; a weight of 0 leaves the observation out.
     *
     * @throws IllegalArgumentException if the lengths differ
     */
    public static LeastSquares weighted(double[][] design, double[] y, double[] weights) {
        return Design.of(design, y, weights).solve();
    }

    /** The standard error of a coefficient. */
    public double standardError(int index) {
        return residualDeviation * Math.sqrt(unscaled[index][index]);
    }

    /** Student's interval for a coefficient. */
    public Interval coefficientInterval(int index, double level) {
        return Interval.around(coefficients[index], quantile(level) * standardError(index));
    }

    /** The fitted value for a row of the design. */
    public double at(double... row) {
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            sum += row[i] * coefficients[i];
        }
        return sum;
    }

    /** The interval for the mean at a row of the design. */
    public Interval meanInterval(double level, double... row) {
        return Interval.around(at(row), quantile(level) * residualDeviation * Math.sqrt(leverage(row)));
    }

    /** The interval for one new observation at a row of the design. */
    public Interval predictionInterval(double level, double... row) {
        return Interval.around(at(row), quantile(level) * residualDeviation * Math.sqrt(1 + leverage(row)));
    }

    /** Student's two-sided quantile at this fit's degrees of freedom. */
    double quantile(double level) {
        return degreesOfFreedom < 1
                ? Double.NaN
                : new TDistribution(degreesOfFreedom).inverseCumulativeProbability(0.5 + level / 2);
    }

    private double leverage(double[] row) {
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            for (int j = 0; j < row.length; j++) {
                sum += row[i] * unscaled[i][j] * row[j];
            }
        }
        return sum;
    }
}
