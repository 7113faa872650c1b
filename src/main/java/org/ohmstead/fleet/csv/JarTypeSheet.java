package org.ohmstead.fleet.csv;

import static org.ohmstead.fleet.csv.Column.optional;
import static org.ohmstead.fleet.csv.Column.required;

import java.time.LocalDate;
import java.util.List;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/** Columns of jar-types.csv. */
final class JarTypeSheet {

    private static final String WHY = "A value counts only with its kind and its source";

    private static final Column<JarTypeEntry, String> CODE =
            required("code", "Code", Cells.code(32), JarTypeEntry::code);
    private static final Column<JarTypeEntry, String> DESCRIPTION =
            optional("description", "Description", Cells.text(200), JarTypeEntry::description);
    private static final Column<JarTypeEntry, Technology> TECHNOLOGY =
            required("technology", "Technology", Cells.oneOf(Technology.class), JarTypeEntry::technology);
    private static final Column<JarTypeEntry, Integer> CELLS_PER_JAR =
            required("cells_per_jar", "Cells per jar", Cells.whole(1, 60), JarTypeEntry::cellsPerJar);
    private static final Column<JarTypeEntry, Double> NOMINAL_VOLTS = required(
                    "nominal_v", "Nominal voltage", Cells.number(0, 200), JarTypeEntry::nominalVolts)
            .in("V");
    private static final Column<JarTypeEntry, Double> RATED_AMPERE_HOURS = required(
                    "rated_ah", "Rated capacity", Cells.number(0, 20000), JarTypeEntry::ratedAmpereHours)
            .in("Ah");
    private static final Column<JarTypeEntry, Double> RATED_HOURS = required(
                    "rated_h", "Rating discharge time", Cells.number(0, 240), JarTypeEntry::ratedHours)
            .in("h");
    private static final Column<JarTypeEntry, Double> END_VOLTS = optional(
                    "end_v_per_cell", "Rating end voltage", Cells.number(0, 3), JarTypeEntry::endVoltsPerCell)
            .in("V/cell");
    private static final Column<JarTypeEntry, Double> RATING_CELSIUS = optional(
                    "rating_c", "Rating temperature", Cells.numberFrom(-40, 60), JarTypeEntry::ratingCelsius)
            .in("°C");
    private static final Column<JarTypeEntry, Double> DESIGN_LIFE_YEARS = optional(
                    "design_life_years", "Design life", Cells.number(0, 60), JarTypeEntry::designLifeYears)
            .in("years");
    private static final Column<JarTypeEntry, Double> DESIGN_LIFE_CELSIUS = optional(
                    "design_life_c",
                    "Design life temperature",
                    Cells.numberFrom(-40, 60),
                    JarTypeEntry::designLifeCelsius)
            .in("°C");
    private static final Column<JarTypeEntry, Double> FLOAT_VOLTS = optional(
                    "float_v_per_cell", "Float voltage at 25 °C", Cells.number(0, 3), JarTypeEntry::floatVoltsPerCell)
            .in("V/cell");
    private static final Column<JarTypeEntry, String> RATING_SOURCE = optional(
                    "rating_source", "Source of these ratings", Cells.text(200), JarTypeEntry::ratingSource)
            .saying("Data sheet and its date.");
    private static final Column<JarTypeEntry, Double> REFERENCE_OHMIC = optional(
                    "reference_ohmic_mohm_or_s",
                    "Ohmic value of a new jar",
                    Cells.number(0, 100000),
                    JarTypeEntry::referenceOhmic)
            .in("mΩ or S")
            .saying("Siemens for conductance, milliohms else.");
    private static final Column<JarTypeEntry, OhmicKind> REFERENCE_KIND =
            optional("reference_ohmic_kind", "Kind", Cells.oneOf(OhmicKind.class), JarTypeEntry::referenceOhmicKind);
    private static final Column<JarTypeEntry, Double> REFERENCE_HERTZ = optional(
                    "reference_ohmic_hz",
                    "Frequency of the test current",
                    Cells.number(0, 100000),
                    JarTypeEntry::referenceOhmicHertz)
            .in("Hz");
    private static final Column<JarTypeEntry, String> REFERENCE_SOURCE = optional(
                    "reference_ohmic_source",
                    "Source of the ohmic value",
                    Cells.text(200),
                    JarTypeEntry::referenceOhmicSource)
            .saying("Who measured it, on what, with what kind of instrument.");
    private static final Column<JarTypeEntry, Double> PER_KELVIN = optional(
                    "ohmic_per_k", "Ohmic change per kelvin", Cells.numberFrom(-0.1, 0.1), JarTypeEntry::ohmicPerKelvin)
            .in("1/K")
            .saying("Relative, around 25 °C. Left empty, nothing is corrected for temperature.");
    private static final Column<JarTypeEntry, String> PER_KELVIN_SOURCE = optional(
            "ohmic_per_k_source",
            "Source of the change per kelvin",
            Cells.text(200),
            JarTypeEntry::ohmicPerKelvinSource);
    private static final Column<JarTypeEntry, Double> WARRANTY_YEARS = optional(
                    "warranty_years", "Warranty", Cells.number(0, 60), JarTypeEntry::warrantyYears)
            .in("years");
    private static final Column<JarTypeEntry, LocalDate> RETIRED_ON = optional(
                    "retired_on", "Retired on", Cells.date(), JarTypeEntry::retiredOn)
            .saying("No new string is built with it from then on.");

    static final Sheet<JarTypeEntry> SHEET = new Sheet<>(
            "jar-types",
            "jar type",
            List.of(
                    CODE,
                    DESCRIPTION,
                    TECHNOLOGY,
                    CELLS_PER_JAR,
                    NOMINAL_VOLTS,
                    RATED_AMPERE_HOURS,
                    RATED_HOURS,
                    END_VOLTS,
                    RATING_CELSIUS,
                    DESIGN_LIFE_YEARS,
                    DESIGN_LIFE_CELSIUS,
                    FLOAT_VOLTS,
                    RATING_SOURCE,
                    REFERENCE_OHMIC,
                    REFERENCE_KIND,
                    REFERENCE_HERTZ,
                    REFERENCE_SOURCE,
                    PER_KELVIN,
                    PER_KELVIN_SOURCE,
                    WARRANTY_YEARS,
                    RETIRED_ON),
            List.of(CODE),
            List.of(
                    Rule.together(REFERENCE_OHMIC.header(), REFERENCE_KIND.header(), WHY),
                    Rule.together(REFERENCE_OHMIC.header(), REFERENCE_SOURCE.header(), WHY),
                    Rule.onlyWith(REFERENCE_OHMIC.header(), REFERENCE_HERTZ.header()),
                    Rule.together(PER_KELVIN.header(), PER_KELVIN_SOURCE.header(), WHY)),
            JarTypeSheet::entry);

    private JarTypeSheet() {}

    private static JarTypeEntry entry(Values<JarTypeEntry> row) {
        return new JarTypeEntry(
                row.of(CODE),
                row.or(DESCRIPTION, ""),
                row.of(TECHNOLOGY),
                row.of(CELLS_PER_JAR),
                row.of(NOMINAL_VOLTS),
                row.of(RATED_AMPERE_HOURS),
                row.of(RATED_HOURS),
                row.orNull(END_VOLTS),
                row.orNull(RATING_CELSIUS),
                row.orNull(DESIGN_LIFE_YEARS),
                row.orNull(DESIGN_LIFE_CELSIUS),
                row.orNull(FLOAT_VOLTS),
                row.or(RATING_SOURCE, ""),
                row.orNull(REFERENCE_OHMIC),
                row.orNull(REFERENCE_KIND),
                row.orNull(REFERENCE_HERTZ),
                row.orNull(REFERENCE_SOURCE),
                row.orNull(PER_KELVIN),
                row.orNull(PER_KELVIN_SOURCE),
                row.orNull(WARRANTY_YEARS),
                row.orNull(RETIRED_ON));
    }
}
