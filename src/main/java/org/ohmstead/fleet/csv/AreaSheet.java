package org.ohmstead.fleet.csv;

import static org.ohmstead.fleet.csv.Column.optional;
import static org.ohmstead.fleet.csv.Column.required;

import java.time.LocalDate;
import java.util.List;

/** Columns of areas.csv. */
final class AreaSheet {

    private static final Column<AreaEntry, String> CODE =
            required("code", "Code", Cells.code(16), AreaEntry::code).saying("Short and lasting.");
    private static final Column<AreaEntry, String> NAME = required("name", "Name", Cells.text(100), AreaEntry::name);
    private static final Column<AreaEntry, LocalDate> RETIRED_ON =
            optional("retired_on", "Retired on", Cells.date(), AreaEntry::retiredOn);

    static final Sheet<AreaEntry> SHEET = new Sheet<>(
            "areas",
            "area",
            List.of(CODE, NAME, RETIRED_ON),
            List.of(CODE),
            List.of(),
            row -> new AreaEntry(row.of(CODE), row.of(NAME), row.orNull(RETIRED_ON)));

    private AreaSheet() {}
}
