package org.ohmstead.statistics;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * M-estimates of regression by iterated weights, the spread being the median absolute residual over 0.6745: Huber,
 * Robust Statistics (1981); Venables and Ripley, Modern Applied Statistics with S (2002), 6.5.
 *
 * <p>Rows with a {@code NaN} are skipped. A fit that meets more than half of the rows exactly has the spread 0 and is
 * returned as it stands; what least squares cannot determine stays {@code NaN}.
 *
 * @param coefficients one a column of the design
 * @param spread of the residuals, scaled to the standard deviation of normal ones
 */
public record RobustRegression(double[] coefficients, double spread) {

    private static final double NORMAL_MEDIAN = 0.6745;
    private static final double HUBER_BOUND = 1.345;
    private static final double BISQUARE_BOUND = 4.685;
    private static final int MOST_STEPS = 200;
    private static final double SETTLED = 1e-10;

    /** Huber's weights: full within 1.345 spreads, then falling as one over the residual. */
    public static RobustRegression huber(double[][] design, double[] y) {
        return iterate(design, y, u -> Math.min(1, HUBER_BOUND / Math.abs(u)));
    }

    /** Tukey's bisquare weights, nought beyond 4.685 spreads; started from least squares. */
    public static RobustRegression bisquare(double[][] design, double[] y) {
        return iterate(design, y, u -> Math.pow(1 - Math.pow(Math.min(1, Math.abs(u) / BISQUARE_BOUND), 2), 2));
    }

    private static RobustRegression iterate(double[][] design, double[] y, DoubleUnaryOperator weight) {
        double[] residuals = residuals(LeastSquares.fit(design, y), design, y);
        RobustRegression now = new RobustRegression(LeastSquares.fit(design, y).coefficients(), spread(residuals));
        for (int step = 0; step < MOST_STEPS && now.spread() > 0; step++) {
            double spread = now.spread();
            double[] weights = Arrays.stream(residuals)
                    .map(r -> weight.applyAsDouble(r / spread))
                    .toArray();
            LeastSquares fit = LeastSquares.weighted(design, y, weights);
            double[] next = residuals(fit, design, y);
            double moved = moved(residuals, next);
            residuals = next;
            now = new RobustRegression(fit.coefficients(), spread(residuals));
            if (moved < SETTLED) {
                break;
            }
        }
        return now;
    }

    private static double[] residuals(LeastSquares fit, double[][] design, double[] y) {
        double[] residuals = new double[y.length];
        Arrays.setAll(residuals, i -> y[i] - fit.at(design[i]));
        return residuals;
    }

    private static double spread(double[] residuals) {
        return Quantiles.median(Arrays.stream(residuals).map(Math::abs).toArray()) / NORMAL_MEDIAN;
    }

    /** The change of the residuals against their size. */
    private static double moved(double[] before, double[] after) {
        double change = 0;
        double size = 0;
        for (int i = 0; i < before.length; i++) {
            if (!Double.isNaN(before[i])) {
                change += Math.pow(after[i] - before[i], 2);
                size += Math.pow(before[i], 2);
            }
        }
        return Math.sqrt(change / size);
    }
}
