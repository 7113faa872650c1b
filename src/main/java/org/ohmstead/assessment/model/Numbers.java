package org.ohmstead.assessment.model;

import org.jspecify.annotations.Nullable;

/** The border between numbers that may be missing (NaN) and results that may be absent (null). */
final class Numbers {

    private Numbers() {}

    /** Null for what is not a finite number. */
    static @Nullable Double orNull(double value) {
        return Double.isFinite(value) ? value : null;
    }

    /** NaN beyond the end of the array: a value that was not recorded at all is missing like any other. */
    static double at(double[] values, int index) {
        return index >= 0 && index < values.length ? values[index] : Double.NaN;
    }

    /** NaN for what cannot be measured: zero, negative, infinite. */
    static double positive(double value) {
        return value > 0 && Double.isFinite(value) ? value : Double.NaN;
    }

    /** The first unless it is missing. */
    static double either(double first, double second) {
        return Double.isNaN(first) ? second : first;
    }

    static int count(double[] values) {
        int count = 0;
        for (double value : values) {
            count += Double.isNaN(value) ? 0 : 1;
        }
        return count;
    }
}
