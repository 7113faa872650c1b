package org.ohmstead.chart;

import java.util.Locale;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.Urgency;

/** Draws links as joints: straps post to post, tier and row cables whole, terminal links out to the terminals. */
final class RackJoints {

    private static final double RISE = 12;
    private static final double OUT = 16;

    private final Svg svg;
    private final RackLayout layout;

    RackJoints(Svg svg, RackLayout layout) {
        this.svg = svg;
        this.layout = layout;
    }

    void draw(RackLink link) {
        svg.open("a", "class", look(link), "href", link.address(), "tabindex", clear(link) ? "-1" : null);
        svg.words("title", link.words());
        Run run = run(link);
        svg.path("reach", run.path);
        svg.path("joint", run.path);
        if (!clear(link)) {
            hotspot(link, run);
        }
        svg.close();
    }

    private static boolean clear(RackLink link) {
        return link.urgency() == Urgency.CLEAR;
    }

    private static String look(RackLink link) {
        String kind = link.kind().isCable() ? " cable" : link.kind() == LinkKind.TERMINAL ? " terminal" : "";
        String measured = Double.isNaN(link.netMicroohms()) ? " unmeasured" : "";
        String asks = link.urgency().name().toLowerCase(Locale.ROOT);
        return "link " + Disc.look(link.urgency()) + " is-" + asks + kind + measured;
    }

    /** A path and the point above which its label stands. */
    private record Run(String path, double labelX, double labelY) {}

    private Run run(RackLink link) {
        if (link.ordinal() == 0) {
            RackLayout.Seat first = layout.seat(1);
            return terminal("+", first.plusPost(), first.y() - 4, !first.rightward());
        }
        if (link.ordinal() == layout.jars()) {
            RackLayout.Seat last = layout.seat(layout.jars());
            return terminal("−", last.minusPost(), last.y() - 4, last.rightward());
        }
        RackLayout.Seat from = layout.seat(link.ordinal());
        RackLayout.Seat to = layout.seat(link.ordinal() + 1);
        return from.row() == to.row() ? along(link, from, to) : around(from, to);
    }

    private Run along(RackLink link, RackLayout.Seat from, RackLayout.Seat to) {
        double y = from.y() - 4;
        double rise = link.kind().isCable() ? RISE + 6 : RISE;
        String path = "M" + at(from.minusPost(), y) + "V" + Svg.number(y - rise) + "H" + Svg.number(to.plusPost()) + "V"
                + Svg.number(y);
        return new Run(path, (from.minusPost() + to.plusPost()) / 2, y - rise);
    }

    /** From the end of a row round the side of the rack to the start of the next. */
    private Run around(RackLayout.Seat from, RackLayout.Seat to) {
        double side = from.rightward() ? 1 : -1;
        double edge = from.rightward() ? layout.right() + OUT : layout.left() - OUT;
        double top = from.y() - 4 - RISE;
        double bottom = to.y() - 4 - RISE;
        String path =
                "M" + at(from.minusPost(), from.y() - 4) + "V" + Svg.number(top) + "H" + Svg.number(edge - side * 8)
                        + "Q" + at(edge, top) + " " + at(edge, top + 8) + "V" + Svg.number(bottom - 8)
                        + "Q" + at(edge, bottom) + " " + at(edge - side * 8, bottom) + "H" + Svg.number(to.plusPost())
                        + "V" + Svg.number(to.y() - 4);
        return new Run(path, from.minusPost(), top);
    }

    private Run terminal(String sign, double x, double y, boolean toTheRight) {
        double end = toTheRight ? layout.right() + OUT - 2 : layout.left() - OUT + 2;
        double top = y - RISE;
        svg.leaf("circle", "class", "pole", "cx", end, "cy", top, "r", 8);
        svg.label("sign", end, top + 4.5, sign);
        double stop = toTheRight ? end - 8 : end + 8;
        String path = "M" + at(x, y) + "V" + Svg.number(top) + "H" + Svg.number(stop);
        return new Run(path, x, top);
    }

    private void hotspot(RackLink link, Run run) {
        boolean second = link.ordinal() % 2 == 1;
        double y = run.labelY - (second ? 6 : 17);
        String words = Double.isNaN(link.netMicroohms()) ? "not read" : Math.round(link.netMicroohms()) + " µΩ";
        svg.leaf("circle", "class", "halo", "cx", run.labelX, "cy", run.labelY, "r", 6.5);
        Disc.draw(svg, link.urgency(), run.labelX, run.labelY, 4.5);
        svg.label("hotspot", run.labelX, y - 3, words);
    }

    private static String at(double x, double y) {
        return Svg.number(x) + " " + Svg.number(y);
    }
}
