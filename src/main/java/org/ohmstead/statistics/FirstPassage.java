package org.ohmstead.statistics;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.FastMath;

/**
 * When Brownian motion with drift first reaches a height, the inverse Gaussian law: Cox and Miller, The Theory of Stochastic
 * Processes (1965), 5.7; Chhikara and Folks, The Inverse Gaussian Distribution (1989).
 *
 * <p>A distance of 0 or less has been passed already. Without variance the passage is certain at distance over drift, or
 * never. With a falling drift it may never come: the share that ever passes is then below 1.
 *
 * @param distance from where the motion is to the height
 * @param drift in a unit of time
 * @param variance gained in a unit of time
 */
public record FirstPassage(double distance, double drift, double variance) {

    private static final NormalDistribution STANDARD = new NormalDistribution();

    /** The share that has passed by a time. */
    public double cdf(double time) {
        if (distance <= 0) {
            return 1;
        }
        if (!(time > 0)) {
            return Double.isNaN(time) ? Double.NaN : 0;
        }
        if (variance <= 0) {
            return drift * time >= distance ? 1 : 0;
        }
        if (Double.isInfinite(time)) {
            return everShare();
        }
        double spread = Math.sqrt(variance * time);
        double beyond = STANDARD.cumulativeProbability((drift * time - distance) / spread);
        double mirrored =
                2 * drift * distance / variance + NormalTail.logShareAbove((distance + drift * time) / spread);
        return Math.min(1, beyond + FastMath.exp(mirrored));
    }

    /** The share that ever passes. */
    public double everShare() {
        if (distance <= 0 || drift > 0) {
            return 1;
        }
        return variance <= 0 ? 0 : FastMath.exp(2 * drift * distance / variance);
    }

    /** The mean time; infinite without a rising drift. */
    public double mean() {
        if (distance <= 0) {
            return 0;
        }
        return drift > 0 ? distance / drift : Double.POSITIVE_INFINITY;
    }

    /**
     * The time by which the share has passed; infinite if so many never do.
     *
     * @param share above 0 and below 1
     */
    public double quantile(double share) {
        if (distance <= 0) {
            return 0;
        }
        if (variance <= 0) {
            return mean();
        }
        if (share >= everShare()) {
            return Double.POSITIVE_INFINITY;
        }
        double low = distance * distance / variance;
        double high = low;
        while (cdf(low) > share) {
            low /= 2;
        }
        while (cdf(high) < share) {
            high *= 2;
        }
        return low == high || Double.isInfinite(high) ? high : solve(share, low, high);
    }

    private double solve(double share, double low, double high) {
        return new BracketingNthOrderBrentSolver(1e-13, 1e-13 * high, 1e-15, 5)
                .solve(500, time -> cdf(time) - share, low, high);
    }
}
