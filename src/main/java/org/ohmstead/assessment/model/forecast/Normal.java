package org.ohmstead.assessment.model.forecast;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** The standard normal law, fast enough to be asked some ten thousand times per survey. */
final class Normal {
    private static final int NODES_PER_UNIT = 32;
    /** Beyond it less than 1e-18 is left. */
    private static final int FARTHEST = 9;

    /** Chance above each node, and density there. */
    private static final double[] TAILS = new double[FARTHEST * NODES_PER_UNIT + 1];

    private static final double[] DENSITIES = new double[TAILS.length];

    static {
        NormalDistribution exact = new NormalDistribution();
        for (int i = 0; i < TAILS.length; i++) {
            double node = (double) i / NODES_PER_UNIT;
            TAILS[i] = exact.cumulativeProbability(-node);
            DENSITIES[i] = exact.density(node);
        }
    }

    private Normal() {}

    /** Cumulative probability, right to 1e-13. */
    static double cumulative(double x) {
        double tail = upperTail(Math.abs(x));
        return x > 0 ? 1 - tail : tail;
    }

    /** Taylor's series around the nearest node: the derivatives of the density are Hermite's polynomials times itself. */
    private static double upperTail(double x) {
        if (x >= FARTHEST) {
            return 0;
        }
        int nearest = (int) (x * NODES_PER_UNIT + .5);
        double node = (double) nearest / NODES_PER_UNIT;
        double d = x - node;
        double n2 = node * node;
        double series = d * ((n2 * (n2 - 6) + 3) / 120);
        series = d * (node * (3 - n2) / 24 + series);
        series = d * ((n2 - 1) / 6 + series);
        series = d * (series - node / 2);
        return TAILS[nearest] - DENSITIES[nearest] * d * (1 + series);
    }

    /** Density at a deviation from the mean, given the variance. */
    static double density(double deviation, double variance) {
        return Math.exp(-deviation * deviation / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);
    }
}
