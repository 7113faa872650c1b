package org.ohmstead.fleet.csv;

import static org.ohmstead.fleet.csv.Column.optional;
import static org.ohmstead.fleet.csv.Column.required;

import java.time.LocalDate;
import java.util.List;

/** Columns of strings.csv. */
final class StringSheet {

    private static final Column<StringEntry, String> SITE = required("site", "Site", Cells.code(24), StringEntry::site);
    private static final Column<StringEntry, String> NAME = required("name", "Name", Cells.name(), StringEntry::name)
            .saying("As on the rack, such as A or 110 V No 1.");
    private static final Column<StringEntry, String> JAR_TYPE =
            required("jar_type", "Jar type", Cells.code(32), StringEntry::jarType);
    private static final Column<StringEntry, List<Integer>> TIERS = required(
                    "tiers", "Tiers", Cells.tiers(), StringEntry::tiers)
            .in("jars")
            .saying("Jars per tier from the positive end, such as 30+30. A cable joins each tier to the next.");
    private static final Column<StringEntry, Integer> STRAPS =
            optional("straps_per_link", "Straps per link", Cells.whole(1, 8), StringEntry::strapsPerLink);
    private static final Column<StringEntry, Double> FLOAT_SETPOINT = optional(
                    "float_setpoint_v_per_cell",
                    "Float set-point at 25 °C",
                    Cells.number(0, 3),
                    StringEntry::floatSetpointVoltsPerCell)
            .in("V/cell");
    private static final Column<StringEntry, Double> DESIGN_LOAD = optional(
                    "design_load_a", "Load at the design duty", Cells.number(0, 100000), StringEntry::designLoadAmps)
            .in("A");
    private static final Column<StringEntry, Double> DESIGN_MINUTES = optional(
                    "design_min", "Duration of the design duty", Cells.number(0, 100000), StringEntry::designMinutes)
            .in("min");
    private static final Column<StringEntry, Double> END_VOLTS = optional(
                    "end_v", "String voltage at its end", Cells.number(0, 2000), StringEntry::endVolts)
            .in("V");
    private static final Column<StringEntry, Integer> PARALLEL_STRINGS = optional(
                    "parallel_strings", "Parallel strings", Cells.whole(1, 16), StringEntry::parallelStrings)
            .saying("How many strings share the load, this one included.");
    private static final Column<StringEntry, LocalDate> IN_SERVICE_ON =
            required("in_service_on", "In service since", Cells.date(), StringEntry::inServiceOn);
    private static final Column<StringEntry, Integer> INTERVAL = optional(
                    "survey_interval_months", "Survey every", Cells.whole(1, 72), StringEntry::surveyIntervalMonths)
            .in("months");
    private static final Column<StringEntry, LocalDate> RETIRED_ON =
            optional("retired_on", "Retired on", Cells.date(), StringEntry::retiredOn);

    static final Sheet<StringEntry> SHEET = new Sheet<>(
            "strings",
            "string",
            List.of(
                    SITE,
                    NAME,
                    JAR_TYPE,
                    TIERS,
                    STRAPS,
                    FLOAT_SETPOINT,
                    DESIGN_LOAD,
                    DESIGN_MINUTES,
                    END_VOLTS,
                    PARALLEL_STRINGS,
                    IN_SERVICE_ON,
                    INTERVAL,
                    RETIRED_ON),
            List.of(SITE, NAME),
            List.of(Rule.that(
                    "retired_on",
                    string -> string.retiredOn() == null || !string.retiredOn().isBefore(string.inServiceOn()),
                    "The string would retire before it was in service.",
                    "Write a day not before in_service_on.")),
            StringSheet::entry);

    private StringSheet() {}

    private static StringEntry entry(Values<StringEntry> row) {
        return new StringEntry(
                row.of(SITE),
                row.of(NAME),
                row.of(JAR_TYPE),
                row.of(TIERS),
                row.or(STRAPS, 1),
                row.orNull(FLOAT_SETPOINT),
                row.orNull(DESIGN_LOAD),
                row.orNull(DESIGN_MINUTES),
                row.orNull(END_VOLTS),
                row.or(PARALLEL_STRINGS, 1),
                row.of(IN_SERVICE_ON),
                row.or(INTERVAL, 12),
                row.orNull(RETIRED_ON));
    }
}
