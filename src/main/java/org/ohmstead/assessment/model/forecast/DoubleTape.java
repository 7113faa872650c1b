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

    void put(boolean value) {
        put(value ? 1 : 0);
    }

    void putAll(double[] more) {
        if (values.length - written < more.length) {
            values = Arrays.copyOf(values, 2 * written + more.length);
        }
        System.arraycopy(more, 0, values, written, more.length);
        written += more.length;
    }

    double take() {
        if (read == written) {
            throw endsTooEarly();
        }
        return values[read++];
    }

    boolean takeBoolean() {
        return take() == 1;
    }

    double[] take(int count) {
        if (written - read < count) {
            throw endsTooEarly();
        }
        read += count;
        return Arrays.copyOfRange(values, read - count, read);
    }

    private IllegalArgumentException endsTooEarly() {
        return new IllegalArgumentException("The stored forecast state ends after " + written + " numbers");
    }

    boolean isUsedUp() {
        return read == written;
    }

    double[] toArray() {
        return Arrays.copyOf(values, written);
    }
}
