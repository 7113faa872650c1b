package org.ohmstead.statistics;

import java.util.Arrays;

/** Takes missing numbers ({@code NaN}) out of arrays. */
final class Present {

    private Present() {}

    /** A fresh copy of the numbers that are there, in their order. */
    static double[] in(double[] values) {
        double[] kept = new double[values.length];
        int count = 0;
        for (double value : values) {
            if (!Double.isNaN(value)) {
                kept[count++] = value;
            }
        }
        return Arrays.copyOf(kept, count);
    }

    /** A fresh, sorted copy of the numbers that are there. */
    static double[] sorted(double[] values) {
        double[] kept = in(values);
        Arrays.sort(kept);
        return kept;
    }

    /** The pairs of which both numbers are there. */
    static Pairs pairs(double[] x, double[] y) {
        requireSameLength(x, y);
        double[] xs = new double[x.length];
        double[] ys = new double[y.length];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            if (!Double.isNaN(x[i]) && !Double.isNaN(y[i])) {
                xs[count] = x[i];
                ys[count++] = y[i];
            }
        }
        return new Pairs(Arrays.copyOf(xs, count), Arrays.copyOf(ys, count));
    }

    private static void requireSameLength(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException("x has " + x.length + " numbers, y has " + y.length);
        }
    }

    /** Two arrays of one length without missing numbers. */
    record Pairs(double[] x, double[] y) {

        int count() {
            return x.length;
        }
    }
}
