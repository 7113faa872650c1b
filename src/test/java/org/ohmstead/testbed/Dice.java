package org.ohmstead.testbed;

import java.util.Random;

/** Repeatable chance. */
final class Dice {
    private final Random random;

    Dice(long seed) {
        this.random = new Random(seed * 0x9E3779B97F4A7C15L + 17);
        random.nextLong();
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    double normal(double deviation) {
        return deviation * random.nextGaussian();
    }

    boolean happens(double chance) {
        return random.nextDouble() < chance;
    }

    double waiting(double perYear) {
        return -Math.log(1 - random.nextDouble()) / perYear;
    }

    /** Student's law with four degrees of freedom: much heavier tails than the normal one. */
    double heavyTailed(double scale) {
        double chi = 0;
        for (int k = 0; k < 4; k++) {
            double z = random.nextGaussian();
            chi += z * z;
        }
        return scale * random.nextGaussian() / Math.sqrt(chi / 4);
    }

    Dice child() {
        return new Dice(random.nextLong());
    }
}
