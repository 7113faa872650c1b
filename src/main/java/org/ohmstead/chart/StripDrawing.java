package org.ohmstead.chart;

import java.util.Locale;
import org.ohmstead.kernel.Urgency;

/** Draws a {@link Strip}: a stroke per value; those that ask for someone are taller and named. */
public final class StripDrawing {

    private static final double WIDTH = 360;
    private static final double LEFT = 84;
    private static final double RIGHT = WIDTH - 22;
    private static final double ROW = 44;

    private final Strip strip;
    private final Axis axis;
    private final Svg svg;
    /** Names stand above and below their marks in turn, so that neighbours can be told apart. */
    private boolean below = true;

    private StripDrawing(String id, Strip strip) {
        this.strip = strip;
        double[] values = strip.rows().stream()
                .flatMap(row -> row.marks().stream())
                .mapToDouble(Strip.Mark::value)
                .toArray();
        double[] fromZero = java.util.Arrays.copyOf(values, values.length + 1);
        axis = Axis.covering(fromZero, 4);
        svg = Svg.drawing("img", id, "strip", WIDTH, ROW * strip.rows().size() + 34, strip.title(), about());
    }

    public static String of(String id, Strip strip) {
        return new StripDrawing(id, strip).draw();
    }

    private String about() {
        long asking = strip.rows().stream()
                .flatMap(row -> row.marks().stream())
                .filter(mark -> mark.urgency() != Urgency.CLEAR)
                .count();
        return asking + " of them need someone; the table of links holds the values in " + strip.unit() + ".";
    }

    private String draw() {
        double bottom = ROW * strip.rows().size() + 6;
        for (double tick : axis.ticks()) {
            svg.line("grid faint", x(tick), 6, x(tick), bottom);
            svg.label("tick middle", x(tick), bottom + 16, axis.label(tick));
        }
        svg.label("tick", 0, bottom + 16, strip.unit());
        for (int i = 0; i < strip.rows().size(); i++) {
            row(strip.rows().get(i), ROW * i + 28);
        }
        return svg.done();
    }

    private void row(Strip.Row row, double y) {
        svg.label("row-words", 0, y + 4, row.words());
        svg.line("grid", LEFT, y, RIGHT, y);
        row.marks().stream().filter(mark -> Double.isFinite(mark.value())).forEach(mark -> mark(mark, y));
    }

    private void mark(Strip.Mark mark, double y) {
        boolean asks = mark.urgency() != Urgency.CLEAR;
        double reach = asks ? 11 : 7;
        double x = x(mark.value());
        svg.line("mark is-" + mark.urgency().name().toLowerCase(Locale.ROOT), x, y - reach, x, y + reach);
        if (asks) {
            String side = x > (LEFT + RIGHT) / 2 ? "mark-words end" : "mark-words";
            below = !below;
            svg.label(side, x > (LEFT + RIGHT) / 2 ? x - 5 : x + 5, below ? y + 17 : y - 9, mark.words());
        }
    }

    private double x(double value) {
        return LEFT + (RIGHT - LEFT) * axis.share(value);
    }
}
