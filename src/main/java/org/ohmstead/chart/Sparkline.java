package org.ohmstead.chart;

import java.util.Arrays;

/** A word-sized trend for a table's cell; the cell beside it says the value. */
public final class Sparkline {

    private static final double WIDTH = 96;
    private static final double HEIGHT = 22;

    private Sparkline() {}

    /** @param values evenly spaced in time; NaN leaves a gap */
    public static String of(double[] values) {
        Svg svg = new Svg().open("svg", "class", "chart sparkline", "viewBox", "0 0 96 22", "aria-hidden", "true");
        double low = Arrays.stream(values).filter(Double::isFinite).min().orElse(0);
        double high = Arrays.stream(values).filter(Double::isFinite).max().orElse(0);
        StringBuilder path = new StringBuilder();
        boolean pen = false;
        for (int i = 0; i < values.length; i++) {
            if (Double.isFinite(values[i])) {
                path.append(pen ? 'L' : 'M')
                        .append(Svg.number(x(i, values.length)))
                        .append(' ');
                path.append(Svg.number(y(values[i], low, high)));
            }
            pen = Double.isFinite(values[i]);
        }
        return svg.path("curve", path.toString()).done();
    }

    private static double x(int i, int count) {
        return count == 1 ? WIDTH / 2 : 2 + (WIDTH - 4) * i / (count - 1);
    }

    private static double y(double value, double low, double high) {
        return high == low ? HEIGHT / 2 : HEIGHT - 3 - (HEIGHT - 6) * (value - low) / (high - low);
    }
}
