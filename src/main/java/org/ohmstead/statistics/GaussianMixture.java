package org.ohmstead.statistics;

import java.util.Arrays;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.FastMath;

/**
 * Normal laws with weights, and what moment matching makes of them: Harrison and Stevens, "Bayesian forecasting", JRSS B 38
 * (1976) 205-247; Kim and Nelson, State-Space Models with Regime Switching (1999), 5.3.
 *
 * @param weights that sum to 1
 * @param means of the parts
 * @param variances of the parts; 0 makes a part a certain value
 */
public record GaussianMixture(double[] weights, double[] means, double[] variances) {

    private static final NormalDistribution STANDARD = new NormalDistribution();

    /** The mean of the whole. */
    public double mean() {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * means[i];
        }
        return sum;
    }

    /** The variance of the whole: within the parts and between them. */
    public double variance() {
        double mean = mean();
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * (variances[i] + (means[i] - mean) * (means[i] - mean));
        }
        return sum;
    }

    /** The share at or below a value. */
    public double cdf(double value) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * partBelow(i, value);
        }
        return sum;
    }

    private double partBelow(int i, double value) {
        if (variances[i] <= 0) {
            return value >= means[i] ? 1 : 0;
        }
        return STANDARD.cumulativeProbability((value - means[i]) / Math.sqrt(variances[i]));
    }

    /**
     * The value below which a share lies.
     *
     * @param share above 0 and below 1
     */
    public double quantile(double share) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double z = STANDARD.inverseCumulativeProbability(share);
        for (int i = 0; i < weights.length; i++) {
            double own = means[i] + z * Math.sqrt(variances[i]);
            low = weights[i] > 0 ? Math.min(low, own) : low;
            high = weights[i] > 0 ? Math.max(high, own) : high;
        }
        if (!(high > low) || cdf(low) >= share) {
            return low;
        }
        return cdf(high) <= share ? high : solve(share, low, high);
    }

    private double solve(double share, double low, double high) {
        return new BracketingNthOrderBrentSolver(1e-14, 1e-14 * (high - low), 1e-15, 5)
                .solve(500, value -> cdf(value) - share, low, high);
    }

    /**
     * Weights after a reading, by Bayes: each weight times the likelihood of the reading under its part.
     *
     * @param weights changed; left as they are if no part can explain the reading
     * @param logLikelihoods one a part
     */
    public static void reweigh(double[] weights, double[] logLikelihoods) {
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < weights.length; i++) {
            best = weights[i] > 0 ? Math.max(best, logLikelihoods[i]) : best;
        }
        if (!Double.isFinite(best)) {
            return;
        }
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] *= weights[i] > 0 ? FastMath.exp(logLikelihoods[i] - best) : 0;
            sum += weights[i];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
    }

    /**
     * Merges a share of one state into another so that mean and covariance of the sum are kept (moment matching).
     *
     * @param mean of the receiving state, changed
     * @param covariance of the receiving state, row by row, changed
     * @param weight of the receiving state before
     * @param otherWeight of what comes in; both 0 leave the state as it is
     */
    public static void absorb(
            double[] mean,
            double[] covariance,
            double weight,
            double[] otherMean,
            double[] otherCovariance,
            double otherWeight) {
        double total = weight + otherWeight;
        if (!(total > 0)) {
            return;
        }
        int n = mean.length;
        double share = otherWeight / total;
        double[] apart = new double[n];
        Arrays.setAll(apart, i -> otherMean[i] - mean[i]);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                int ij = i * n + j;
                covariance[ij] +=
                        share * (otherCovariance[ij] - covariance[ij]) + share * (1 - share) * apart[i] * apart[j];
            }
            mean[i] += share * apart[i];
        }
    }
}
