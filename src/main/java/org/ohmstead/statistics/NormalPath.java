package org.ohmstead.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A straight path whose start and slope are jointly normal, over a population or in our knowledge of one unit: Lu and Meeker,
 * Technometrics 35 (1993) 161-174; Meeker and Escobar, Statistical Methods for Reliability Data (1998), 13.4.
 *
 * @param startMean at time 0
 * @param slopeMean in a unit of time
 */
public record NormalPath(
        double startMean, double slopeMean, double startVariance, double slopeVariance, double covariance) {

    /** The mean at a time. */
    public double mean(double time) {
        return startMean + slopeMean * time;
    }

    /** The variance at a time. */
    public double variance(double time) {
        return startVariance + 2 * time * covariance + time * time * slopeVariance;
    }

    /** The chance that the path stands at or above the limit at a time; 0 or 1 where nothing varies. */
    public double chanceAbove(double limit, double time) {
        double above = mean(time) - limit;
        double variance = variance(time);
        if (variance <= 0) {
            return above >= 0 ? 1 : 0;
        }
        return new NormalDistribution().cumulativeProbability(above / Math.sqrt(variance));
    }
}
