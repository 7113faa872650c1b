package org.ohmstead.chart;

import java.util.Locale;
import org.ohmstead.kernel.Urgency;

/**
 * The rack as built: jars in their tiers with a column as tall as the change on their baseline, links as joints between
 * their posts. A column hanging from the top is a change against the direction of ageing.
 */
public final class RackDrawing {

    /** The change at which a column fills its jar. */
    public static final double FULL_COLUMN = 0.5;

    private static final double NUMBERED_FROM_WIDTH = 21;

    private final RackPlan plan;
    private final RackLayout layout;
    private final Svg svg;

    private RackDrawing(String id, RackPlan plan, RackLayout layout, String look) {
        this.plan = plan;
        this.layout = layout;
        this.svg = Svg.drawing("group", id, look, layout.width(), layout.height(), "The rack as built", about(plan));
    }

    /** Every tier in one row, as it stands. */
    public static String asBuilt(String id, RackPlan plan) {
        RackLayout layout = RackLayout.of(plan.tiers(), Integer.MAX_VALUE, 960, 34);
        return new RackDrawing(id, plan, layout, "rack").draw();
    }

    /** For a narrow screen: tiers broken into rows of at most eight jars, the walk unbroken. */
    public static String wrapped(String id, RackPlan plan) {
        RackLayout layout = RackLayout.of(plan.tiers(), 8, 344, 26);
        return new RackDrawing(id, plan, layout, "rack").draw();
    }

    private static String about(RackPlan plan) {
        long jars =
                plan.jars().stream().filter(j -> j.urgency() != Urgency.CLEAR).count();
        long links =
                plan.links().stream().filter(l -> l.urgency() != Urgency.CLEAR).count();
        return plan.jars().size() + " jars in " + plan.tiers().size()
                + (plan.tiers().size() == 1 ? " tier; " : " tiers; ") + jars + " of the jars and " + links
                + " of the links need someone. The tables below hold every value.";
    }

    private String draw() {
        shelves();
        RackJoints joints = new RackJoints(svg, layout);
        plan.links().stream().filter(l -> l.urgency() == Urgency.CLEAR).forEach(joints::draw);
        plan.links().stream().filter(l -> l.urgency() != Urgency.CLEAR).forEach(joints::draw);
        plan.jars().forEach(this::jar);
        return svg.done();
    }

    private void shelves() {
        layout.seats().stream().mapToDouble(RackLayout.Seat::y).distinct().forEach(top -> {
            double y = top + RackLayout.JAR_HEIGHT + 3;
            svg.line("shelf", layout.left() - 6, y, layout.right() + 6, y);
        });
    }

    private void jar(RackJar jar) {
        RackLayout.Seat seat = layout.seat(jar.position());
        svg.open(
                "a",
                "class",
                look(jar),
                "href",
                jar.address(),
                "tabindex",
                jar.urgency() == Urgency.CLEAR ? "-1" : null);
        svg.words("title", jar.words());
        posts(seat);
        svg.leaf(
                "rect",
                "class",
                "case",
                "x",
                seat.x(),
                "y",
                seat.y(),
                "width",
                seat.width(),
                "height",
                RackLayout.JAR_HEIGHT,
                "rx",
                Math.min(3.0, seat.width() / 6));
        column(jar, seat);
        numberAndDisc(jar, seat);
        svg.close();
    }

    private static String look(RackJar jar) {
        String measured = Double.isNaN(jar.change()) ? " unmeasured" : "";
        return "jar " + Disc.look(jar.urgency()) + " is-" + jar.urgency().name().toLowerCase(Locale.ROOT) + measured;
    }

    private void posts(RackLayout.Seat seat) {
        double width = Math.min(5, seat.width() / 5);
        for (double x : new double[] {seat.plusPost(), seat.minusPost()}) {
            svg.leaf("rect", "class", "post", "x", x - width / 2, "y", seat.y() - 4, "width", width, "height", 4.5);
        }
    }

    private void column(RackJar jar, RackLayout.Seat seat) {
        if (Double.isNaN(jar.change())) {
            return;
        }
        double room = RackLayout.JAR_HEIGHT - 3;
        double height = Math.max(1.5, room * Math.min(1, Math.abs(jar.change()) / FULL_COLUMN));
        boolean hanging = jar.change() < 0;
        double y = hanging ? seat.y() + 1.5 : seat.y() + RackLayout.JAR_HEIGHT - 1.5 - height;
        double inset = Math.min(1.5, seat.width() / 10);
        svg.leaf(
                "rect",
                "class",
                hanging ? "column hanging" : "column",
                "x",
                seat.x() + inset,
                "y",
                y,
                "width",
                seat.width() - 2 * inset,
                "height",
                height);
    }

    private void numberAndDisc(RackJar jar, RackLayout.Seat seat) {
        double middle = seat.x() + seat.width() / 2;
        boolean asks = jar.urgency() != Urgency.CLEAR;
        if (seat.width() >= NUMBERED_FROM_WIDTH || jar.position() % 5 == 0 && !asks) {
            svg.label("number", middle, seat.y() + 14, Integer.toString(jar.position()));
        }
        if (asks) {
            double radius = Math.min(6, seat.width() * 0.3);
            svg.leaf("circle", "class", "halo", "cx", middle, "cy", seat.y() + 28, "r", radius + 2.5);
            Disc.draw(svg, jar.urgency(), middle, seat.y() + 28, radius);
        }
    }
}
