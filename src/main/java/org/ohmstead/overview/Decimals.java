package org.ohmstead.overview;

import java.util.Locale;

/**
 * A number with a fixed count of decimals, thousands set apart by commas and a true minus. A page holds hundreds of them:
 * only what lies too near a rounding edge, or is too large, goes through the slow general formatter.
 */
final class Decimals {

    private static final double[] SCALES = {1, 10, 100, 1_000, 10_000};
    private static final double MOST = 1e12;
    private static final double NEAR = 1e-3;

    private Decimals() {}

    static String of(double value, int decimals) {
        if (decimals >= SCALES.length || !(Math.abs(value) < MOST)) {
            return general(value, decimals);
        }
        double scaled = Math.abs(value) * SCALES[decimals];
        double below = Math.floor(scaled);
        if (Math.abs(scaled - below - 0.5) < NEAR) {
            return general(value, decimals);
        }
        long units = (long) below + (scaled - below > 0.5 ? 1 : 0);
        return (Math.copySign(1, value) < 0 ? "−" : "") + text(units, decimals);
    }

    private static String general(double value, int decimals) {
        return String.format(Locale.UK, "%,." + decimals + "f", value).replace('-', '−');
    }

    private static String text(long units, int decimals) {
        StringBuilder text = new StringBuilder(24).append(units);
        while (text.length() <= decimals) {
            text.insert(0, '0');
        }
        int point = text.length() - decimals;
        if (decimals > 0) {
            text.insert(point, '.');
        }
        for (int comma = point - 3; comma > 0; comma -= 3) {
            text.insert(comma, ',');
        }
        return text.toString();
    }
}
