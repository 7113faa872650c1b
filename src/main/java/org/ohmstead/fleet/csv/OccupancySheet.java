package org.ohmstead.fleet.csv;

import static org.ohmstead.fleet.csv.Column.optional;
import static org.ohmstead.fleet.csv.Column.required;

import java.time.LocalDate;
import java.util.List;

/** Columns of occupancies.csv. */
final class OccupancySheet {

    private static final Column<OccupancyEntry, String> SITE =
            required("site", "Site", Cells.code(24), OccupancyEntry::site);
    private static final Column<OccupancyEntry, String> STRING =
            required("string", "String", Cells.name(), OccupancyEntry::string);
    private static final Column<OccupancyEntry, Integer> POSITION =
            required("position", "Position", Cells.whole(1, 480), OccupancyEntry::position);
    private static final Column<OccupancyEntry, String> JAR_TYPE =
            required("jar_type", "Jar type", Cells.code(32), OccupancyEntry::jarType);
    private static final Column<OccupancyEntry, String> SERIAL =
            optional("serial", "Serial", Cells.text(60), OccupancyEntry::serial);
    private static final Column<OccupancyEntry, LocalDate> FROM =
            required("from", "From", Cells.date(), OccupancyEntry::from);
    private static final Column<OccupancyEntry, LocalDate> UNTIL = optional(
                    "until", "Until", Cells.date(), OccupancyEntry::until)
            .saying("The first day on which it no longer sat there.");
    private static final Column<OccupancyEntry, String> REASON =
            optional("reason", "Why it came", Cells.text(200), OccupancyEntry::reason);
    private static final Column<OccupancyEntry, String> LEFT_REASON =
            optional("left_reason", "Why it left", Cells.text(200), OccupancyEntry::leftReason);
    private static final Column<OccupancyEntry, Double> BASELINE = optional(
                    "baseline_ohmic_mohm_or_s", "Baseline", Cells.number(0, 100000), OccupancyEntry::baselineOhmic)
            .in("mΩ or S")
            .saying("Siemens for conductance, milliohms else.");
    private static final Column<OccupancyEntry, String> BASELINE_SOURCE =
            optional("baseline_source", "Source of the baseline", Cells.text(200), OccupancyEntry::baselineSource);

    static final Sheet<OccupancyEntry> SHEET = new Sheet<>(
            "occupancies",
            "jar in its place",
            List.of(
                    SITE,
                    STRING,
                    POSITION,
                    JAR_TYPE,
                    SERIAL,
                    FROM,
                    UNTIL,
                    REASON,
                    LEFT_REASON,
                    BASELINE,
                    BASELINE_SOURCE),
            List.of(SITE, STRING, POSITION, FROM),
            List.of(
                    Rule.that(
                            "until",
                            jar -> jar.until() == null || jar.until().isAfter(jar.from()),
                            "The jar would leave before it came.",
                            "Write a day after from, or leave it empty while the jar sits there."),
                    Rule.together(
                            BASELINE.header(), BASELINE_SOURCE.header(), "A baseline counts only with its source")),
            OccupancySheet::entry);

    private OccupancySheet() {}

    private static OccupancyEntry entry(Values<OccupancyEntry> row) {
        return new OccupancyEntry(
                row.of(SITE),
                row.of(STRING),
                row.of(POSITION),
                row.of(JAR_TYPE),
                row.orNull(SERIAL),
                row.of(FROM),
                row.orNull(UNTIL),
                row.or(REASON, ""),
                row.or(LEFT_REASON, ""),
                row.orNull(BASELINE),
                row.orNull(BASELINE_SOURCE));
    }
}
