package org.ohmstead.statistics;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.FastMath;

/**
 * Maximum likelihood for censored Weibull or lognormal lifetimes, ln t = x'β + σ·z: Lawless, Statistical Models and
 * Methods for Lifetime Data (2003); Meeker and Escobar, Statistical Methods for Reliability Data (1998), chapters 8 and
 * 17. Intervals are normal-approximation ones on the log scale (Wald).
 *
 * <p>Where the likelihood has no maximum inside (no failure at all, one failure time and nothing beyond, columns that
 * depend on each other) every number is {@code NaN} and {@link #determined()} is false.
 *
 * @param law the law of the lifetimes
 * @param coefficients β, on the scale of ln t
 * @param sigma the scale of ln t; a Weibull's shape is 1/σ
 * @param logLikelihood of the lifetimes themselves, not of their logarithms
 * @param covariance of (β, σ)
 */
public record LifeRegression(
        LifeLaw law, double[] coefficients, double sigma, double logLikelihood, double[][] covariance) {

    /** Fits one law to all. */
    public static LifeRegression fit(LifeLaw law, Lifetimes times) {
        double[][] design = new double[times.size()][];
        Arrays.fill(design, new double[] {1});
        return fit(law, times, design);
    }

    /**
     * Fits with explaining columns; no intercept is added.
     *
     * @param design one row a lifetime
     */
    public static LifeRegression fit(LifeLaw law, Lifetimes times, double[][] design) {
        if (design.length != times.size()) {
            throw new IllegalArgumentException(
                    "the design has " + design.length + " rows for " + times.size() + " lifetimes");
        }
        return NewtonAscent.of(law, times, design);
    }

    /** Whether the data determine the fit. */
    public boolean determined() {
        return !Double.isNaN(sigma);
    }

    /** The standard error of a coefficient, or, at the index past the last, of σ. */
    public double standardError(int index) {
        return Math.sqrt(covariance[index][index]);
    }

    /** A Weibull's characteristic life or a lognormal's median, for a fit without explaining columns. */
    public double scale() {
        return FastMath.exp(coefficients[0]);
    }

    /** A Weibull's shape. */
    public double shape() {
        return 1 / sigma;
    }

    /** The time by which the share has failed; a share of 0.1 gives "B10". */
    public double quantile(double share, double... row) {
        return FastMath.exp(location(row) + law.quantile(share) * sigma);
    }

    /** The interval for that time. */
    public Interval quantileInterval(double share, double level, double... row) {
        double[] slope = Arrays.copyOf(rowOrOne(row), coefficients.length + 1);
        slope[coefficients.length] = law.quantile(share);
        double reach = normal(level) * Math.sqrt(quadratic(slope));
        double centre = quantile(share, row);
        return new Interval(centre * FastMath.exp(-reach), centre * FastMath.exp(reach));
    }

    /** The interval for σ. */
    public Interval sigmaInterval(double level) {
        double reach = normal(level) * standardError(coefficients.length) / sigma;
        return new Interval(sigma * FastMath.exp(-reach), sigma * FastMath.exp(reach));
    }

    /** The share that has failed by a time. */
    public double failedBy(double time, double... row) {
        return law.cdf((FastMath.log(time) - location(row)) / sigma);
    }

    /** The interval for that share, by the normal law of the standardised time (Wald, Meeker and Escobar section 8.4). */
    public Interval failedByInterval(double time, double level, double... row) {
        double z = (FastMath.log(time) - location(row)) / sigma;
        double[] slope = Arrays.copyOf(rowOrOne(row), coefficients.length + 1);
        slope[coefficients.length] = z;
        double reach = normal(level) * Math.sqrt(quadratic(slope)) / sigma;
        return new Interval(law.cdf(z - reach), law.cdf(z + reach));
    }

    private double location(double[] row) {
        double[] x = rowOrOne(row);
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += x[i] * coefficients[i];
        }
        return sum;
    }

    private static double[] rowOrOne(double[] row) {
        return row.length == 0 ? new double[] {1} : row;
    }

    private double quadratic(double[] slope) {
        double sum = 0;
        for (int i = 0; i < slope.length; i++) {
            for (int j = 0; j < slope.length; j++) {
                sum += slope[i] * covariance[i][j] * slope[j];
            }
        }
        return sum;
    }

    private static double normal(double level) {
        return new NormalDistribution().inverseCumulativeProbability(0.5 + level / 2);
    }
}
