package org.ohmstead.assessment.model.forecast;

import java.util.Arrays;

/** A growing list of numbers, written once and read back in the same order. */
final class DoubleTape {
    private double[] values;
    private int written;
    private int read;

    DoubleTape() {
        this.values = new double[1024];
    }

    DoubleTape(double[] values) {
        this.values = values;
        this.written = values.length;
    }

    void put(double value) {
        if (written == values.length) {
            values = Arrays.copyOf(values, 2 * written);
        }
        values[written++] = value;
    }

    void putAll(double[] more) {
        for (double value : more) {
            put(value);
        }
    }

    double take() {
        if (read == written) {
            throw new IllegalArgumentException("The stored forecast state ends after " + written + " numbers");
        }
        return values[read++];
    }

    double[] take(int count) {
        double[] taken = new double[count];
        for (int i = 0; i < count; i++) {
            taken[i] = take();
        }
        return taken;
    }

    boolean isUsedUp() {
        return read == written;
    }

    double[] toArray() {
        return Arrays.copyOf(values, written);
    }
}
