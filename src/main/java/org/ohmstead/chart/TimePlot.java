package org.ohmstead.chart;

import java.time.LocalDate;

/** The ground of a drawing over time: years along the bottom, round ticks along the left. */
final class TimePlot {

    static final double WIDTH = 440;
    static final double HEIGHT = 240;
    static final double LEFT = 48;
    static final double RIGHT = WIDTH - 12;
    static final double TOP = 22;
    static final double BOTTOM = HEIGHT - 26;

    private final Svg svg;
    private final Axis axis;
    private final LocalDate first;
    private final LocalDate last;

    TimePlot(Svg svg, Axis axis, LocalDate first, LocalDate last) {
        this.svg = svg;
        this.axis = axis;
        this.first = first;
        this.last = last;
    }

    void draw(String unit) {
        svg.label("unit", 4, 13, unit);
        axis.ticks().forEach(this::tick);
        years();
    }

    double x(LocalDate day) {
        return LEFT
                + (RIGHT - LEFT) * (day.toEpochDay() - first.toEpochDay()) / (last.toEpochDay() - first.toEpochDay());
    }

    double y(double value) {
        return BOTTOM - (BOTTOM - TOP) * axis.share(value);
    }

    private void tick(double value) {
        svg.line("grid", LEFT, y(value), RIGHT, y(value));
        svg.label("tick end", LEFT - 7, y(value) + 4, axis.label(value));
    }

    private void years() {
        int from = first.getYear() + 1;
        int step = Math.max(1, (last.getYear() - from) / 6 + 1);
        for (int year = from; year <= last.getYear(); year += step) {
            double x = x(LocalDate.of(year, 1, 1));
            svg.line("grid", x, BOTTOM, x, BOTTOM + 4);
            svg.label("tick middle", x, BOTTOM + 18, Integer.toString(year));
        }
    }
}
