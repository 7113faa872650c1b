package org.ohmstead.chart;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/**
 * A string on the wall: disc for urgency, lower edge for the days until it is due. The edge grows from nothing at 90
 * days to half the tile at 0, and runs all along the tile once the date has passed. Thousands fit on a page since each
 * only refers to the {@link #symbols}.
 */
public final class Tile {

    static final int HORIZON_DAYS = 90;
    private static final int STEPS = 6;

    private Tile() {}

    /** To be put on the page once, before the first tile. */
    public static String symbols() {
        Svg svg = new Svg().open("svg", "class", "symbols", "width", 0, "height", 0, "aria-hidden", "true");
        for (Urgency urgency : Urgency.values()) {
            svg.open("symbol", "id", Disc.look(urgency), "viewBox", "0 0 24 24");
            Disc.draw(svg, urgency, 12, 11, 7);
            svg.close();
        }
        for (int step = 1; step <= STEPS; step++) {
            symbol(svg, "edge-" + step, 12.0 * step / STEPS);
        }
        symbol(svg, "edge-late", 24);
        return svg.done();
    }

    private static void symbol(Svg svg, String id, double width) {
        svg.open("symbol", "id", id, "viewBox", "0 0 24 24");
        svg.leaf("rect", "x", 0, "y", 21.5, "width", width, "height", 2.5).close();
    }

    /** @param daysToDue negative once the date has passed, null when there is none */
    public static String of(Urgency urgency, @Nullable Integer daysToDue) {
        Svg svg = new Svg().open("svg", "class", Disc.look(urgency), "viewBox", "0 0 24 24", "aria-hidden", "true");
        svg.leaf("use", "href", "#" + Disc.look(urgency));
        String edge = edge(daysToDue);
        if (edge != null) {
            svg.leaf("use", "class", edge.equals("edge-late") ? "edge late" : "edge", "href", "#" + edge);
        }
        return svg.done();
    }

    static @Nullable String edge(@Nullable Integer daysToDue) {
        if (daysToDue == null || daysToDue >= HORIZON_DAYS) {
            return null;
        }
        if (daysToDue < 0) {
            return "edge-late";
        }
        return "edge-" + (STEPS - daysToDue * STEPS / HORIZON_DAYS);
    }
}
