package org.ohmstead.chart;

import static org.ohmstead.chart.TimePlot.BOTTOM;
import static org.ohmstead.chart.TimePlot.HEIGHT;
import static org.ohmstead.chart.TimePlot.LEFT;
import static org.ohmstead.chart.TimePlot.RIGHT;
import static org.ohmstead.chart.TimePlot.TOP;
import static org.ohmstead.chart.TimePlot.WIDTH;

import java.util.List;
import java.util.stream.Stream;
import org.ohmstead.chart.LifePlot.Point;

/** Draws a {@link LifePlot}: the counted share as steps on its band, the fitted law as a dashed curve on its own. */
public final class LifeDrawing {

    private static final double BELOW = BOTTOM - 12;

    /** A curve that hardly falls is drawn on a scale that goes down to this. */
    private static final double LEAST_DEPTH = 90;

    private final LifePlot plot;
    private final Axis years;
    private final Axis percents;
    private final Svg svg;

    private LifeDrawing(String id, LifePlot plot) {
        this.plot = plot;
        double last = plot.law().isEmpty()
                ? plot.untilYears()
                : plot.law().get(plot.law().size() - 1).years();
        this.years = Axis.covering(new double[] {0, Math.max(1, Math.max(last, plot.untilYears()))}, 6);
        double lowest = Stream.concat(plot.steps().stream(), plot.law().stream())
                .mapToDouble(Point::low)
                .min()
                .orElse(1);
        this.percents = Axis.covering(new double[] {Math.min(LEAST_DEPTH, lowest * 100), 100}, 4);
        String about = plot.steps().isEmpty()
                ? "No jar has failed yet."
                : "Share in service after each of " + plot.steps().size() + " ages at which jars failed, with its range"
                        + (plot.law().isEmpty() ? "" : ", and a fitted law")
                        + "; the table beside it holds the values.";
        this.svg = Svg.drawing("img", id, "life", WIDTH, HEIGHT, plot.title(), about);
    }

    public static String of(String id, LifePlot plot) {
        return new LifeDrawing(id, plot).draw();
    }

    private String draw() {
        svg.label("unit", 4, 13, "% in service");
        percents.ticks().forEach(this::percent);
        years.ticks().forEach(this::age);
        svg.label("tick end", RIGHT, HEIGHT - 2, "years in service");
        if (!plot.law().isEmpty()) {
            svg.path("law-band", smoothBand(plot.law()));
        }
        svg.path("band", stepBand());
        if (!plot.law().isEmpty()) {
            svg.path("law", smooth(plot.law()));
        }
        svg.path("curve", steps());
        return svg.done();
    }

    private void percent(double percent) {
        svg.line("grid", LEFT, y(percent / 100), RIGHT, y(percent / 100));
        svg.label("tick end", LEFT - 7, y(percent / 100) + 4, percents.label(percent));
    }

    private void age(double age) {
        svg.line("grid", x(age), BELOW, x(age), BELOW + 4);
        svg.label("tick middle", x(age), BELOW + 17, years.label(age));
    }

    private String steps() {
        StringBuilder path = new StringBuilder("M" + point(0, 1));
        double share = 1;
        for (Point step : plot.steps()) {
            path.append('L').append(point(step.years(), share)).append('L').append(point(step.years(), step.share()));
            share = step.share();
        }
        return path.append('L').append(point(plot.untilYears(), share)).toString();
    }

    /** Forward along the upper ends, back along the lower ones. */
    private String stepBand() {
        StringBuilder path = new StringBuilder("M" + point(0, 1));
        double high = 1;
        for (Point step : plot.steps()) {
            path.append('L').append(point(step.years(), high)).append('L').append(point(step.years(), step.high()));
            high = step.high();
        }
        path.append('L').append(point(plot.untilYears(), high));
        for (int i = plot.steps().size() - 1; i >= 0; i--) {
            Point step = plot.steps().get(i);
            double right = i + 1 < plot.steps().size() ? plot.steps().get(i + 1).years() : plot.untilYears();
            path.append('L').append(point(right, step.low())).append('L').append(point(step.years(), step.low()));
        }
        double first =
                plot.steps().isEmpty() ? plot.untilYears() : plot.steps().get(0).years();
        return path.append('L').append(point(first, 1)).append('Z').toString();
    }

    private String smooth(List<Point> law) {
        StringBuilder path = new StringBuilder();
        law.forEach(at -> path.append(path.isEmpty() ? 'M' : 'L').append(point(at.years(), at.share())));
        return path.toString();
    }

    private String smoothBand(List<Point> law) {
        StringBuilder path = new StringBuilder();
        law.forEach(at -> path.append(path.isEmpty() ? 'M' : 'L').append(point(at.years(), at.high())));
        for (int i = law.size() - 1; i >= 0; i--) {
            path.append('L').append(point(law.get(i).years(), law.get(i).low()));
        }
        return path.append('Z').toString();
    }

    private String point(double age, double share) {
        return Svg.number(x(age)) + " " + Svg.number(y(share));
    }

    private double x(double age) {
        return LEFT + (RIGHT - LEFT) * years.share(age);
    }

    private double y(double share) {
        return BELOW - (BELOW - TOP) * percents.share(share * 100);
    }
}
