package org.ohmstead.statistics;

/**
 * The logarithm of the share of a standard normal law below a value, for likelihoods that ask for it a million times: a
 * cubic through values and slopes at even steps, within 1e-11.
 */
public final class NormalLogShare {

    /** Above this less than 2e-19 of the law is left. */
    private static final double END = 9;

    private static final int STEPS_PER_UNIT = 128;
    private static final double[] VALUES = new double[(int) (2 * END * STEPS_PER_UNIT) + 1];
    private static final double[] RISES = new double[VALUES.length];

    static {
        for (int i = 0; i < VALUES.length; i++) {
            double z = (double) i / STEPS_PER_UNIT - END;
            VALUES[i] = NormalTail.logShareAbove(-z);
            RISES[i] = NormalTail.hazard(-z) / STEPS_PER_UNIT;
        }
    }

    private NormalLogShare() {}

    /** ln Φ(z). */
    public static double below(double z) {
        if (z >= END) {
            return 0;
        }
        if (!(z >= -END)) {
            return NormalTail.logShareAbove(-z);
        }
        double place = (z + END) * STEPS_PER_UNIT;
        int i = (int) place;
        double t = place - i;
        double s = 1 - t;
        return s * s * ((1 + 2 * t) * VALUES[i] + t * RISES[i])
                + t * t * ((1 + 2 * s) * VALUES[i + 1] - s * RISES[i + 1]);
    }
}
