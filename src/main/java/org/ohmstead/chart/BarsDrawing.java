package org.ohmstead.chart;

import java.util.stream.DoubleStream;

/** Draws {@link Bars}: a bar to the value, a whisker over the range, words below. */
public final class BarsDrawing {

    private static final double WIDTH = 760;
    private static final double HEIGHT = 260;
    private static final double LEFT = 44;
    private static final double RIGHT = WIDTH - 8;
    private static final double TOP = 22;
    private static final double BOTTOM = HEIGHT - 42;
    private static final double THICK = 0.56;

    private final Bars bars;
    private final Axis axis;
    private final Svg svg;

    private BarsDrawing(String id, Bars bars) {
        this.bars = bars;
        this.axis = Axis.covering(
                DoubleStream.concat(
                                DoubleStream.of(0, 1),
                                bars.bars().stream().mapToDouble(bar -> Math.max(bar.value(), bar.high())))
                        .toArray(),
                4);
        this.svg = Svg.drawing(
                "img",
                id,
                "bars",
                WIDTH,
                HEIGHT,
                bars.title(),
                bars.bars().size() + " bars in " + bars.unit()
                        + ", each with its range; the table beside it holds the values.");
    }

    public static String of(String id, Bars bars) {
        return new BarsDrawing(id, bars).draw();
    }

    private String draw() {
        svg.label("unit", 4, 13, bars.unit());
        axis.ticks().forEach(this::tick);
        double room = (RIGHT - LEFT) / Math.max(1, bars.bars().size());
        for (int i = 0; i < bars.bars().size(); i++) {
            bar(bars.bars().get(i), LEFT + room * i, room);
        }
        return svg.done();
    }

    private void tick(double value) {
        svg.line("grid", LEFT, y(value), RIGHT, y(value));
        svg.label("tick end", LEFT - 7, y(value) + 4, axis.label(value));
    }

    private void bar(Bars.Bar bar, double x, double room) {
        double middle = x + room / 2;
        double width = room * THICK;
        double top = y(bar.value());
        svg.open("g");
        svg.words("title", bar.words().replace("\n", " ") + ": " + Svg.number(bar.value()) + " " + bars.unit());
        svg.leaf("rect", "class", "bar", "x", middle - width / 2, "y", top, "width", width, "height", BOTTOM - top);
        svg.line("whisker", middle, y(bar.low()), middle, y(bar.high()));
        svg.line("whisker", middle - 5, y(bar.low()), middle + 5, y(bar.low()));
        svg.line("whisker", middle - 5, y(bar.high()), middle + 5, y(bar.high()));
        svg.close();
        String[] lines = bar.words().split("\n");
        for (int i = 0; i < lines.length; i++) {
            svg.label("tick middle", middle, BOTTOM + 17 + 15 * i, lines[i]);
        }
    }

    private double y(double value) {
        return BOTTOM - (BOTTOM - TOP) * axis.share(value);
    }
}
