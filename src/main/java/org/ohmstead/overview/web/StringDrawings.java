package org.ohmstead.overview.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.chart.RackDrawing;
import org.ohmstead.chart.RackJar;
import org.ohmstead.chart.RackLink;
import org.ohmstead.chart.RackPlan;
import org.ohmstead.chart.Strip;
import org.ohmstead.chart.StripDrawing;
import org.ohmstead.chart.Tapestry;
import org.ohmstead.chart.TapestryDrawing;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.overview.JarLine;
import org.ohmstead.overview.LinkLine;
import org.ohmstead.overview.StringHistoryView;
import org.ohmstead.overview.StringPage;

/** Turns a string's page into drawings. */
final class StringDrawings {

    private final StringPage page;
    private final String address;

    StringDrawings(StringPage page, String contextPath) {
        this.page = page;
        this.address = contextPath + "/strings/" + page.plate().stringId();
    }

    String rackWide() {
        return RackDrawing.asBuilt("rack-wide", rack());
    }

    String rackNarrow() {
        return RackDrawing.wrapped("rack-narrow", rack());
    }

    private RackPlan rack() {
        return new RackPlan(
                page.plate().tiers(),
                page.jars().stream().map(this::jar).toList(),
                page.links().stream().map(this::link).toList());
    }

    private RackJar jar(JarLine jar) {
        return new RackJar(
                jar.position(),
                jar.urgency(),
                readLast(jar.readOn()) ? number(jar.changeOnBaseline()) : Double.NaN,
                address + "/jars/" + jar.position(),
                jar.words());
    }

    private RackLink link(LinkLine link) {
        return new RackLink(
                link.ordinal(),
                link.kind(),
                link.urgency(),
                readLast(link.readOn()) ? number(link.net()) : Double.NaN,
                address + "/links/" + link.ordinal(),
                link.words());
    }

    String strip() {
        List<Strip.Row> rows = new ArrayList<>();
        for (LinkKind kind : LinkKind.values()) {
            List<Strip.Mark> marks = page.links().stream()
                    .filter(link -> link.kind() == kind)
                    .map(link -> new Strip.Mark(link.name(), number(link.net()), link.urgency()))
                    .toList();
            if (!marks.isEmpty()) {
                rows.add(new Strip.Row(kind.words() + "s", marks));
            }
        }
        return StripDrawing.of("strip", new Strip("Links by kind", "µΩ", rows));
    }

    static @Nullable String tapestry(StringHistoryView history) {
        return history.takenOn().isEmpty()
                ? null
                : TapestryDrawing.of("tapestry", new Tapestry(history.takenOn(), history.change(), history.replaced()));
    }

    /** The judgement keeps an older reading where the last survey has none; the rack shows the last survey. */
    private boolean readLast(@Nullable LocalDate readOn) {
        return page.judged() != null && page.judged().asOf().equals(readOn);
    }

    private static double number(@Nullable Double value) {
        return value == null ? Double.NaN : value;
    }
}
