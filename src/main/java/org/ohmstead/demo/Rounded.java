package org.ohmstead.demo;

/** Numbers with as many digits as an instrument shows. */
final class Rounded {

    private Rounded() {}

    static double to(double value, int decimals) {
        double scale = Math.pow(10, decimals);
        return Math.rint(value * scale) / scale;
    }
}
