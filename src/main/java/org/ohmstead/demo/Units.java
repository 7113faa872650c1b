package org.ohmstead.demo;

import java.util.Random;

/**
 * What is particular to each jar and link of a string, from its seed: deviations that stay, and drifts.
 *
 * @param jarLevel natural logarithm of a jar's ohmic value over its type's
 * @param jarDrift rise per year of its own
 * @param jarVolts deviation per cell
 * @param linkLevel natural logarithm of a link over its kind
 */
record Units(double[] jarLevel, double[] jarDrift, double[] jarVolts, double[] linkLevel) {

    static Units of(DemoString string) {
        Random random = new Random(string.seed());
        int positions = string.positions();
        return new Units(
                normal(positions, 0.028, random),
                normal(positions, 0.0016, random),
                normal(positions, 0.006, random),
                normal(positions + 1, 0.045, random));
    }

    private static double[] normal(int count, double deviation, Random random) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = deviation * Math.max(-2.4, Math.min(2.4, random.nextGaussian()));
        }
        return values;
    }
}
