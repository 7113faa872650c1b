package org.ohmstead.chart;

import static org.ohmstead.chart.TimePlot.BOTTOM;
import static org.ohmstead.chart.TimePlot.HEIGHT;
import static org.ohmstead.chart.TimePlot.LEFT;
import static org.ohmstead.chart.TimePlot.RIGHT;
import static org.ohmstead.chart.TimePlot.TOP;
import static org.ohmstead.chart.TimePlot.WIDTH;

import java.time.LocalDate;
import java.util.stream.DoubleStream;

/** Draws a {@link Trend} with its levels, years and round ticks. */
public final class TrendDrawing {

    private final Trend trend;
    private final LocalDate from;
    private final long days;
    private final Svg svg;
    private final TimePlot plot;

    private TrendDrawing(String id, Trend trend) {
        this.trend = trend;
        Axis axis = Axis.covering(
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
        plot = new TimePlot(svg, axis, from, from.plusDays(days));
    }

    public static String of(String id, Trend trend) {
        return new TrendDrawing(id, trend).draw();
    }

    private String about() {
        long measured = DoubleStream.of(trend.values()).filter(Double::isFinite).count();
        return measured + " readings in " + trend.unit() + "; the table beside it holds the values.";
    }

    private String draw() {
        plot.draw(trend.unit());
        trend.levels().forEach(this::level);
        trend.breaks().stream().filter(this::inside).forEach(this::breakLine);
        svg.path("curve", curve());
        for (int i = 0; i < trend.values().length; i++) {
            dot(i);
        }
        trend.levels().forEach(this::levelWords);
        return svg.done();
    }

    private void level(Trend.Level level) {
        double y = y(level.value());
        svg.line(level.limit() ? "level limit" : "level", LEFT, y, RIGHT, y);
    }

    /** Over the curve, so that it crosses no word. */
    private void levelWords(Trend.Level level) {
        svg.label(level.limit() ? "level-words limit" : "level-words", LEFT + 6, y(level.value()) - 5, level.words());
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
        return plot.x(day);
    }

    private double y(double value) {
        return plot.y(value);
    }
}
