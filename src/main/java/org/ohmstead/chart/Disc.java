package org.ohmstead.chart;

import java.util.Locale;
import org.ohmstead.kernel.Urgency;

/** The disc that stands for an urgency: empty, quarter, half, full. Decoration: the word stands beside it. */
public final class Disc {

    private Disc() {}

    /** A drawing of its own. */
    public static String of(Urgency urgency) {
        Svg svg =
                new Svg().open("svg", "class", "disc " + look(urgency), "viewBox", "0 0 20 20", "aria-hidden", "true");
        draw(svg, urgency, 10, 10, 8.5);
        return svg.done();
    }

    static String look(Urgency urgency) {
        return "disc-" + urgency.name().toLowerCase(Locale.ROOT);
    }

    static void draw(Svg svg, Urgency urgency, double x, double y, double radius) {
        svg.leaf("circle", "class", "ring", "cx", x, "cy", y, "r", radius);
        if (urgency != Urgency.CLEAR) {
            svg.path("filling", filling(urgency, x, y, radius * 0.7));
        }
    }

    private static String filling(Urgency urgency, double x, double y, double r) {
        String top = "M" + Svg.number(x) + " " + Svg.number(y - r);
        String arc = "a" + Svg.number(r) + " " + Svg.number(r) + " 0 0 1 ";
        return switch (urgency) {
            case CLEAR -> "";
            case RECHECK -> top + arc + Svg.number(r) + " " + Svg.number(r) + "H" + Svg.number(x) + "z";
            case PLAN -> top + arc + "0 " + Svg.number(2 * r) + "z";
            case ACT -> top + arc + "0 " + Svg.number(2 * r) + arc + "0 " + Svg.number(-2 * r) + "z";
        };
    }
}
