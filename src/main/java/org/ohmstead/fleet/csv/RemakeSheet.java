package org.ohmstead.fleet.csv;

import static org.ohmstead.fleet.csv.Column.optional;
import static org.ohmstead.fleet.csv.Column.required;

import java.time.LocalDate;
import java.util.List;

/** Columns of remakes.csv. */
final class RemakeSheet {

    private static final Column<RemakeEntry, String> SITE = required("site", "Site", Cells.code(24), RemakeEntry::site);
    private static final Column<RemakeEntry, String> STRING =
            required("string", "String", Cells.name(), RemakeEntry::string);
    private static final Column<RemakeEntry, Integer> ORDINAL =
            required("link", "Link", Cells.whole(0, 480), RemakeEntry::ordinal).saying("0 is the positive terminal.");
    private static final Column<RemakeEntry, LocalDate> REMADE_ON =
            required("remade_on", "Remade on", Cells.date(), RemakeEntry::remadeOn);
    private static final Column<RemakeEntry, Double> AS_FOUND = optional(
                    "as_found_uohm", "As found", Cells.number(0, 1000000), RemakeEntry::asFoundMicroohms)
            .in("µΩ");
    private static final Column<RemakeEntry, Double> AS_LEFT = optional(
                    "as_left_uohm", "As left", Cells.number(0, 1000000), RemakeEntry::asLeftMicroohms)
            .in("µΩ");
    private static final Column<RemakeEntry, String> NOTE =
            optional("note", "Note", Cells.text(500), RemakeEntry::note);

    static final Sheet<RemakeEntry> SHEET = new Sheet<>(
            "remakes",
            "remake",
            List.of(SITE, STRING, ORDINAL, REMADE_ON, AS_FOUND, AS_LEFT, NOTE),
            List.of(SITE, STRING, ORDINAL, REMADE_ON),
            List.of(),
            row -> new RemakeEntry(
                    row.of(SITE),
                    row.of(STRING),
                    row.of(ORDINAL),
                    row.of(REMADE_ON),
                    row.orNull(AS_FOUND),
                    row.orNull(AS_LEFT),
                    row.or(NOTE, "")));

    private RemakeSheet() {}
}
