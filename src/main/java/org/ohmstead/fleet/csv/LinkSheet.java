package org.ohmstead.fleet.csv;

import static org.ohmstead.fleet.csv.Column.optional;
import static org.ohmstead.fleet.csv.Column.required;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Conductor;
import org.ohmstead.kernel.Conductor.Flexibility;
import org.ohmstead.kernel.LinkKind;

/** Columns of links.csv. */
final class LinkSheet {

    private static final Column<LinkEntry, String> SITE = required("site", "Site", Cells.code(24), LinkEntry::site);
    private static final Column<LinkEntry, String> STRING =
            required("string", "String", Cells.name(), LinkEntry::string);
    private static final Column<LinkEntry, Integer> ORDINAL =
            required("link", "Link", Cells.whole(0, 480), LinkEntry::ordinal).saying("0 is the positive terminal.");
    private static final Column<LinkEntry, LinkKind> KIND =
            required("kind", "Kind", Cells.oneOf(LinkKind.class), LinkEntry::kind);
    private static final Column<LinkEntry, Integer> STRAPS =
            optional("straps", "Straps", Cells.whole(1, 8), LinkEntry::straps).saying("Read one by one.");
    private static final Column<LinkEntry, String> SIZE = optional(
                    "conductor_mm2_or_awg", "Conductor", Cells.conductorSize(), LinkSheet::size)
            .in("mm² or AWG");
    private static final Column<LinkEntry, Flexibility> FLEXIBILITY = optional(
                    "conductor_class", "Class", Cells.oneOf(Flexibility.class), LinkSheet::flexibility)
            .saying("Stranded is class 2, flexible is class 5.");
    private static final Column<LinkEntry, Double> METRES = optional(
                    "conductor_m", "Length", Cells.number(0, 100), LinkSheet::metres)
            .in("m");
    private static final Column<LinkEntry, Integer> IN_PARALLEL =
            optional("conductors_in_parallel", "In parallel", Cells.whole(1, 12), LinkSheet::inParallel);

    static final Sheet<LinkEntry> SHEET = new Sheet<>(
            "links",
            "link",
            List.of(SITE, STRING, ORDINAL, KIND, STRAPS, SIZE, FLEXIBILITY, METRES, IN_PARALLEL),
            List.of(SITE, STRING, ORDINAL),
            List.of(
                    Rule.together(SIZE.header(), METRES.header(), "A cable's resistance needs both"),
                    Rule.onlyWith(SIZE.header(), FLEXIBILITY.header()),
                    Rule.onlyWith(SIZE.header(), IN_PARALLEL.header())),
            LinkSheet::entry);

    private LinkSheet() {}

    private static LinkEntry entry(Values<LinkEntry> row) {
        return new LinkEntry(
                row.of(SITE), row.of(STRING), row.of(ORDINAL), row.of(KIND), row.or(STRAPS, 1), conductor(row));
    }

    private static @Nullable Conductor conductor(Values<LinkEntry> row) {
        String size = row.orNull(SIZE);
        Double metres = row.orNull(METRES);
        if (size == null || metres == null) {
            return null;
        }
        return new Conductor(size, row.or(FLEXIBILITY, Flexibility.CLASS_2), metres, row.or(IN_PARALLEL, 1));
    }

    private static @Nullable String size(LinkEntry link) {
        return link.conductor() == null ? null : link.conductor().size();
    }

    private static @Nullable Flexibility flexibility(LinkEntry link) {
        return link.conductor() == null ? null : link.conductor().flexibility();
    }

    private static @Nullable Double metres(LinkEntry link) {
        return link.conductor() == null ? null : link.conductor().lengthMetres();
    }

    private static @Nullable Integer inParallel(LinkEntry link) {
        return link.conductor() == null ? null : link.conductor().inParallel();
    }
}
