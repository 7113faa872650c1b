package org.ohmstead.chart;

import static org.ohmstead.chart.TimePlot.HEIGHT;
import static org.ohmstead.chart.TimePlot.LEFT;
import static org.ohmstead.chart.TimePlot.RIGHT;
import static org.ohmstead.chart.TimePlot.WIDTH;

import java.time.LocalDate;
import java.util.stream.DoubleStream;

/** Draws {@link Deviations}: dots around zero, and the band of what they say together. */
public final class DeviationsDrawing {

    /** What lies farther off is a string that changed: it is drawn at the edge. */
    private static final double MOST_PERCENT = 15;

    private static final LocalDate NONE = LocalDate.of(2000, 1, 1);

    private final Deviations deviations;
    private final TimePlot plot;
    private final Svg svg;

    private DeviationsDrawing(String id, Deviations deviations) {
        this.deviations = deviations;
        LocalDate first = day(true);
        LocalDate last = day(false);
        Axis axis = Axis.covering(
                DoubleStream.concat(
                                DoubleStream.of(-2, 2),
                                deviations.dots().stream().mapToDouble(dot -> within(dot.percent())))
                        .toArray(),
                4);
        svg = Svg.drawing(
                "img",
                id,
                "deviations",
                WIDTH,
                HEIGHT,
                deviations.title(),
                deviations.dots().size() + " surveys; the table beside it holds the values.");
        plot = new TimePlot(svg, axis, first.minusDays(20), last.plusDays(20));
    }

    private LocalDate day(boolean first) {
        return deviations.dots().stream()
                .map(Deviations.Dot::on)
                .reduce((a, b) -> a.isBefore(b) == first ? a : b)
                .orElse(NONE);
    }

    private static double within(double percent) {
        return Math.max(-MOST_PERCENT, Math.min(MOST_PERCENT, percent));
    }

    public static String of(String id, Deviations deviations) {
        return new DeviationsDrawing(id, deviations).draw();
    }

    private String draw() {
        plot.draw("% off what was expected");
        if (day(true).getYear() == day(false).getYear() && !deviations.dots().isEmpty()) {
            svg.label("tick", LEFT, HEIGHT - 6, day(true).toString());
            svg.label("tick end", RIGHT, HEIGHT - 6, day(false).toString());
        }
        svg.line("zero", LEFT, plot.y(0), RIGHT, plot.y(0));
        Deviations.Level level = deviations.level();
        if (level != null) {
            band(level);
        }
        deviations.dots().forEach(this::dot);
        return svg.done();
    }

    private void band(Deviations.Level level) {
        double x = Math.max(LEFT, plot.x(level.since()));
        double top = plot.y(within(level.high()));
        svg.leaf(
                "rect",
                "class",
                "band",
                "x",
                x,
                "y",
                top,
                "width",
                Math.max(0, RIGHT - x),
                "height",
                plot.y(within(level.low())) - top);
        svg.line("level", x, plot.y(within(level.percent())), RIGHT, plot.y(within(level.percent())));
    }

    private void dot(Deviations.Dot dot) {
        svg.open(
                "circle",
                "class",
                dot.strong() ? "dot strong" : "dot",
                "cx",
                plot.x(dot.on()),
                "cy",
                plot.y(within(dot.percent())),
                "r",
                dot.strong() ? 3.5 : 2.5);
        svg.words("title", dot.on() + ": " + Svg.number(dot.percent()) + " %").close();
    }
}
