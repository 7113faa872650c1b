package org.ohmstead.capacity.model;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A column of a record over its minutes, without the empty cells. */
final class Curve {

    private final double[] minutes;
    private final double[] values;

    private Curve(double[] minutes, double[] values) {
        this.minutes = minutes;
        this.values = values;
    }

    /** The rows from first to last, both included. */
    static Curve of(double[] minutes, double[] values, int first, int last) {
        int[] rows = IntStream.rangeClosed(first, last)
                .filter(row -> Double.isFinite(values[row]))
                .toArray();
        return new Curve(
                Arrays.stream(rows).mapToDouble(row -> minutes[row]).toArray(),
                Arrays.stream(rows).mapToDouble(row -> values[row]).toArray());
    }

    boolean isEmpty() {
        return values.length == 0;
    }

    double firstValue() {
        return values[0];
    }

    /** When the value first comes down to that; null when it never does. */
    @Nullable
    Double fallsTo(double value) {
        for (int i = 1; i < values.length; i++) {
            if (values[i] <= value && values[i - 1] > value) {
                double share = (values[i - 1] - value) / (values[i - 1] - values[i]);
                return minutes[i - 1] + share * (minutes[i] - minutes[i - 1]);
            }
        }
        return null;
    }

    /** At a minute; NaN outside the curve. */
    double at(double minute) {
        for (int i = 0; i < minutes.length; i++) {
            if (minutes[i] == minute) {
                return values[i];
            }
            if (i > 0 && minutes[i - 1] < minute && minute < minutes[i]) {
                double share = (minute - minutes[i - 1]) / (minutes[i] - minutes[i - 1]);
                return values[i - 1] + share * (values[i] - values[i - 1]);
            }
        }
        return Double.NaN;
    }

    /** Over time between two minutes. */
    double mean(double from, double to) {
        double area = 0;
        double length = 0;
        for (int i = 1; i < minutes.length && minutes[i - 1] < to; i++) {
            double until = Math.min(minutes[i], to);
            double width = until - Math.max(minutes[i - 1], from);
            if (width > 0) {
                area += width * (values[i - 1] + at(until)) / 2;
                length += width;
            }
        }
        return area / length;
    }

    /** The largest departure from the mean between two minutes, as a share of the mean. */
    double swing(double from, double to, double mean) {
        return IntStream.range(0, minutes.length)
                .filter(i -> minutes[i] >= from && minutes[i] <= to)
                .mapToDouble(i -> Math.abs(values[i] / mean - 1))
                .max()
                .orElse(0);
    }
}
