package org.ohmstead.ledger;

/**
 * Single precision as the database keeps it, double precision as the service computes with. A number written with up
 * to six significant digits comes back as the very double it was: 24.6, not 24.600000381.
 */
final class Reals {

    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10};

    private Reals() {}

    /**
     * To what is stored.
     *
     * @throws IllegalArgumentException when the number is infinite or too large to be stored
     */
    static float toReal(double value) {
        float real = (float) value;
        if (Float.isInfinite(real)) {
            throw new IllegalArgumentException("Not a reading: " + value);
        }
        return real;
    }

    /** From what is stored: the double nearest to the shortest decimal, where that has at most six digits. */
    static double fromReal(float real) {
        double value = real;
        double magnitude = Math.abs(value);
        if (!(magnitude >= 1e-5 && magnitude < 1e5)) {
            return value;
        }
        double scale = POWERS[decimals(magnitude)];
        double decimal = Math.rint(value * scale) / scale;
        return (float) decimal == real ? decimal : value;
    }

    /** How many decimals make six significant digits. */
    private static int decimals(double magnitude) {
        int decimals = 1;
        for (double limit = 1e4; magnitude < limit; limit /= 10) {
            decimals++;
        }
        return Math.min(decimals, POWERS.length - 1);
    }
}
