package org.ohmstead.chart;

import static org.ohmstead.chart.TimePlot.BOTTOM;
import static org.ohmstead.chart.TimePlot.HEIGHT;
import static org.ohmstead.chart.TimePlot.LEFT;
import static org.ohmstead.chart.TimePlot.RIGHT;
import static org.ohmstead.chart.TimePlot.TOP;
import static org.ohmstead.chart.TimePlot.WIDTH;

import java.time.LocalDate;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/** Draws a {@link Fan}: readings as dots, the limit as a line, and a wedge to the days between which it is reached. */
public final class FanDrawing {

    private static final int YEARS_AHEAD = 6;

    private final Fan fan;
    private final LocalDate last;
    private final Svg svg;
    private final TimePlot plot;

    private FanDrawing(String id, Fan fan) {
        this.fan = fan;
        Axis axis = Axis.covering(
                DoubleStream.concat(
                                DoubleStream.of(fan.rises()).map(rise -> rise * 100),
                                DoubleStream.of(0, fan.limit() * 100, fan.rise() * 100))
                        .toArray(),
                4);
        LocalDate first = fan.days().isEmpty()
                ? fan.from().minusYears(1)
                : fan.days().get(0).minusDays(20);
        last = fan.from().plusYears(YEARS_AHEAD);
        String about = DoubleStream.of(fan.rises()).filter(Double::isFinite).count()
                + " readings, and the days between which the limit may be passed; the list below holds the dates.";
        svg = Svg.drawing("img", id, "trend fan", WIDTH, HEIGHT, "When it may pass its limit", about);
        plot = new TimePlot(svg, axis, first, last);
    }

    public static String of(String id, Fan fan) {
        return new FanDrawing(id, fan).draw();
    }

    private String draw() {
        plot.draw("% rise");
        wedge();
        double limit = y(fan.limit());
        svg.line("level limit", LEFT, limit, RIGHT, limit);
        svg.label("level-words limit", LEFT + 6, limit - 5, "limit");
        svg.line("break", x(fan.from()), TOP, x(fan.from()), BOTTOM);
        for (int i = 0; i < fan.rises().length; i++) {
            dot(i);
        }
        return svg.done();
    }

    /** From today's expected rise straight to each of the days, cut off at the right edge. */
    private void wedge() {
        if (fan.early() == null || fan.rise() >= fan.limit()) {
            return;
        }
        String start = point(fan.from(), fan.rise());
        String low = fan.late() == null ? point(last, fan.rise()) : towards(fan.late());
        svg.path("wedge", "M" + start + "L" + towards(fan.early()) + corner() + "L" + low + "Z");
        if (fan.middle() != null) {
            svg.path("middle", "M" + start + "L" + towards(fan.middle()));
        }
    }

    /** Where the limit leaves the picture, if the wedge reaches that far. */
    private String corner() {
        boolean reaches = fan.early() != null && fan.early().isBefore(last);
        return reaches && (fan.late() == null || fan.late().isAfter(last)) ? "L" + point(last, fan.limit()) : "";
    }

    private String towards(@Nullable LocalDate day) {
        LocalDate meets = day == null ? last : day;
        if (!meets.isAfter(last)) {
            return point(meets.isBefore(fan.from()) ? fan.from() : meets, fan.limit());
        }
        double share = (double) (last.toEpochDay() - fan.from().toEpochDay())
                / (meets.toEpochDay() - fan.from().toEpochDay());
        return point(last, fan.rise() + share * (fan.limit() - fan.rise()));
    }

    private String point(LocalDate day, double rise) {
        return Svg.number(x(day)) + " " + Svg.number(y(rise));
    }

    private void dot(int i) {
        double rise = fan.rises()[i];
        if (Double.isFinite(rise)) {
            svg.open("circle", "class", "dot", "cx", x(fan.days().get(i)), "cy", y(rise), "r", 2.75);
            svg.words("title", fan.days().get(i) + ": " + Svg.number(rise * 100) + " %")
                    .close();
        }
    }

    private double x(LocalDate day) {
        return plot.x(day);
    }

    private double y(double rise) {
        return plot.y(rise * 100);
    }
}
