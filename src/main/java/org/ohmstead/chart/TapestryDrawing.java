package org.ohmstead.chart;

import java.util.Locale;

/** Draws a {@link Tapestry}: a row per survey, a column per jar. One path per shade keeps it small. */
public final class TapestryDrawing {

    /** Upper bounds of the shades; beyond the last one lies the deepest. */
    private static final double[] BOUNDS = {-0.15, -0.08, -0.04, 0.04, 0.08, 0.12, 0.18, 0.25, 0.35};

    private static final double LEFT = 44;
    private static final double TOP = 24;

    private final Tapestry tapestry;
    private final double cellWidth;
    private final double cellHeight;
    private final Svg svg;

    private TapestryDrawing(String id, Tapestry tapestry) {
        this.tapestry = tapestry;
        cellWidth = Math.max(6, Math.min(26, 900.0 / Math.max(1, tapestry.jars())));
        cellHeight =
                Math.max(7, Math.min(16, 300.0 / Math.max(1, tapestry.takenOn().size())));
        double width = LEFT + cellWidth * tapestry.jars() + 4;
        double height = TOP + cellHeight * tapestry.takenOn().size() + 4;
        svg = Svg.drawing("img", id, "tapestry", width, height, "Every jar, every survey", about(tapestry));
    }

    public static String of(String id, Tapestry tapestry) {
        return new TapestryDrawing(id, tapestry).draw();
    }

    private static String about(Tapestry tapestry) {
        return "Change of " + tapestry.jars() + " jars on their own baselines over "
                + tapestry.takenOn().size() + " surveys; each jar's page holds the values.";
    }

    private String draw() {
        columnLabels();
        yearLabels();
        String frame = "translate(" + Svg.number(LEFT) + " " + Svg.number(TOP) + ") scale(" + Svg.number(cellWidth)
                + " " + Svg.number(cellHeight) + ")";
        svg.open("g", "transform", frame);
        for (int shade = 0; shade <= BOUNDS.length; shade++) {
            cells("shade-" + shade, cellsOf(shade));
        }
        cells("absent", cellsOf(-1));
        cells("replaced", replacements());
        return svg.done();
    }

    private void columnLabels() {
        int step = tapestry.jars() > 120 ? 10 : 5;
        for (int position = 1; position <= tapestry.jars(); position += position == 1 ? step - 1 : step) {
            svg.label("tick middle", LEFT + (position - 0.5) * cellWidth, TOP - 8, Integer.toString(position));
        }
    }

    private void yearLabels() {
        int year = 0;
        double lastY = -100;
        for (int row = 0; row < tapestry.takenOn().size(); row++) {
            double y = TOP + (row + 0.5) * cellHeight + 4;
            int own = tapestry.takenOn().get(row).getYear();
            if (own != year && y - lastY >= 13) {
                svg.label("tick end", LEFT - 8, y, Integer.toString(own));
                lastY = y;
            }
            year = own;
        }
    }

    private void cells(String look, String path) {
        if (!path.isEmpty()) {
            svg.path(look, path);
        }
    }

    private String cellsOf(int shade) {
        StringBuilder path = new StringBuilder();
        for (int row = 0; row < tapestry.change().length; row++) {
            for (int column = 0; column < tapestry.jars(); column++) {
                if (shade(tapestry.change()[row][column]) == shade) {
                    String box = shade < 0 ? ".35 %d.35h.3v.3h-.3z" : " %dh.9v.88h-.9z";
                    path.append('M').append(column).append(box.formatted(row));
                }
            }
        }
        return path.toString();
    }

    private String replacements() {
        StringBuilder path = new StringBuilder();
        for (int row = 0; row < tapestry.replaced().length; row++) {
            for (int column = 0; column < tapestry.jars(); column++) {
                if (tapestry.replaced()[row][column]) {
                    path.append(String.format(Locale.ROOT, "M%d %dh.9v.28h-.9z", column, row));
                }
            }
        }
        return path.toString();
    }

    /** 0 for the strongest fall to 9 for the strongest rise; -1 when not measured. */
    static int shade(double change) {
        if (Double.isNaN(change)) {
            return -1;
        }
        int shade = 0;
        while (shade < BOUNDS.length && change > BOUNDS[shade]) {
            shade++;
        }
        return shade;
    }

    /** The key: every shade from fall to rise. */
    public static String key(String id) {
        Svg key = Svg.drawing("img", id, "tapestry key", 200, 14, "Shades", "From 15 % down to 35 % up");
        for (int shade = 0; shade <= BOUNDS.length; shade++) {
            key.leaf("rect", "class", "shade-" + shade, "x", shade * 20.0, "y", 1, "width", 19, "height", 12);
        }
        return key.done();
    }
}
