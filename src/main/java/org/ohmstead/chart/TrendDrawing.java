package org.ohmstead.chart;

import java.time.LocalDate;
import java.util.stream.DoubleStream;

/** Draws a {@link Trend} with its levels, years and round ticks. */
public final class TrendDrawing {

    private static final double WIDTH = 440;
    private static final double HEIGHT = 240;
    private static final double LEFT = 48;
    private static final double RIGHT = WIDTH - 12;
    private static final double TOP = 22;
    private static final double BOTTOM = HEIGHT - 26;

    private final Trend trend;
    private final Axis axis;
    private final LocalDate from;
    private final long days;
    private final Svg svg;

    private TrendDrawing(String id, Trend trend) {
        this.trend = trend;
        axis = Axis.covering(
                DoubleStream.concat(
                                DoubleStream.of(trend.values()),
                                trend.levels().stream().mapToDouble(Trend.Level::value))
                        .toArray(),
                4);
        from = trend.days().isEmpty() ? LocalDate.EPOCH : trend.days().get(0).minusDays(20);
        LocalDate last =
                trend.days().isEmpty() ? from : trend.days().get(trend.days().size() - 1);
        days = Math.max(30, last.toEpochDay() - from.toEpochDay() + 20);
        svg = Svg.drawing("img", id, "trend", WIDTH, HEIGHT, trend.title(), about());
    }

    public static String of(String id, Trend trend) {
        return new TrendDrawing(id, trend).draw();
    }

    private String about() {
        long measured = DoubleStream.of(trend.values()).filter(Double::isFinite).count();
        return measured + " readings in " + trend.unit() + "; the table beside it holds the values.";
    }

    private String draw() {
        svg.label("unit", 4, 13, trend.unit());
        axis.ticks().forEach(this::tick);
        years();
        trend.levels().forEach(this::level);
        trend.breaks().stream().filter(this::inside).forEach(this::breakLine);
        svg.path("curve", curve());
        for (int i = 0; i < trend.values().length; i++) {
            dot(i);
        }
        return svg.done();
    }

    private void tick(double value) {
        svg.line("grid", LEFT, y(value), RIGHT, y(value));
        svg.label("tick end", LEFT - 7, y(value) + 4, axis.label(value));
    }

    private void years() {
        int first = from.getYear() + 1;
        int last = from.plusDays(days).getYear();
        int step = Math.max(1, (last - first) / 6 + 1);
        for (int year = first; year <= last; year += step) {
            double x = x(LocalDate.of(year, 1, 1));
            svg.line("grid", x, BOTTOM, x, BOTTOM + 4);
            svg.label("tick middle", x, BOTTOM + 18, Integer.toString(year));
        }
    }

    private void level(Trend.Level level) {
        double y = y(level.value());
        svg.line(level.limit() ? "level limit" : "level", LEFT, y, RIGHT, y);
        svg.label(level.limit() ? "level-words limit" : "level-words", LEFT + 6, y - 5, level.words());
    }

    private boolean inside(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(from.plusDays(days));
    }

    private void breakLine(LocalDate day) {
        svg.line("break", x(day), TOP, x(day), BOTTOM);
    }

    private String curve() {
        StringBuilder path = new StringBuilder();
        boolean pen = false;
        for (int i = 0; i < trend.values().length; i++) {
            if (!Double.isFinite(trend.values()[i])) {
                pen = false;
                continue;
            }
            boolean joined = pen && !brokenBefore(i);
            path.append(joined ? 'L' : 'M')
                    .append(Svg.number(x(trend.days().get(i))))
                    .append(' ');
            path.append(Svg.number(y(trend.values()[i])));
            pen = true;
        }
        return path.toString();
    }

    private boolean brokenBefore(int i) {
        LocalDate day = trend.days().get(i);
        LocalDate before = trend.days().get(i - 1);
        return trend.breaks().stream().anyMatch(b -> b.isAfter(before) && !b.isAfter(day));
    }

    private void dot(int i) {
        double value = trend.values()[i];
        if (Double.isFinite(value)) {
            svg.open("circle", "class", "dot", "cx", x(trend.days().get(i)), "cy", y(value), "r", 2.75);
            svg.words("title", trend.days().get(i) + ": " + Svg.number(value) + " " + trend.unit())
                    .close();
        }
    }

    private double x(LocalDate day) {
        return LEFT + (RIGHT - LEFT) * (day.toEpochDay() - from.toEpochDay()) / days;
    }

    private double y(double value) {
        return BOTTOM - (BOTTOM - TOP) * axis.share(value);
    }
}
