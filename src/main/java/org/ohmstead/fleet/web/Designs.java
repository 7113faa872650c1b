package org.ohmstead.fleet.web;

import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ohmstead.fleet.AreaView;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarTypeView;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.AreaEntry;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.fleet.csv.LinkEntry;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.fleet.csv.RemakeEntry;
import org.ohmstead.fleet.csv.Sheets;
import org.ohmstead.fleet.csv.SiteEntry;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;
import org.springframework.stereotype.Component;

/** The register's forms. */
@Component
class Designs {

    private final FleetRegister register;

    Designs(FleetRegister register) {
        this.register = register;
    }

    FormDesign<AreaEntry> area() {
        return new FormDesign<>(Sheets.AREAS, "area", Map.of("", List.of("code", "name", "retired_on")), Map.of());
    }

    FormDesign<SiteEntry> site() {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        groups.put("", List.of("code", "name", "area", "time_zone"));
        groups.put("Where it is", List.of("latitude_deg", "longitude_deg", "load_kind"));
        groups.put("For those who go there", List.of("access_notes", "contacts"));
        groups.put("End of use", List.of("retired_on"));
        return new FormDesign<>(Sheets.SITES, "site", groups, Map.of("area", areas(), "time_zone", zones()));
    }

    FormDesign<JarTypeEntry> jarType() {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        groups.put("", List.of("code", "description", "technology", "cells_per_jar", "nominal_v"));
        groups.put(
                "Ratings",
                List.of(
                        "rated_ah",
                        "rated_h",
                        "end_v_per_cell",
                        "rating_c",
                        "float_v_per_cell",
                        "design_life_years",
                        "design_life_c",
                        "warranty_years",
                        "rating_source"));
        groups.put(
                "Reference ohmic value",
                List.of(
                        "reference_ohmic_mohm_or_s",
                        "reference_ohmic_kind",
                        "reference_ohmic_hz",
                        "reference_ohmic_source",
                        "ohmic_per_k",
                        "ohmic_per_k_source"));
        groups.put("End of use", List.of("retired_on"));
        return new FormDesign<>(
                Sheets.JAR_TYPES,
                "jar-type",
                groups,
                Map.of(
                        "technology", words(Technology.values(), Technology::words),
                        "reference_ohmic_kind", words(OhmicKind.values(), OhmicKind::words)));
    }

    FormDesign<StringEntry> string() {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        groups.put("", List.of("site", "name", "jar_type", "in_service_on"));
        groups.put("Plan", List.of("tiers", "straps_per_link"));
        groups.put(
                "Duty",
                List.of(
                        "float_setpoint_v_per_cell",
                        "design_load_a",
                        "design_min",
                        "end_v",
                        "parallel_strings",
                        "survey_interval_months"));
        groups.put("End of use", List.of("retired_on"));
        return new FormDesign<>(Sheets.STRINGS, "string", groups, Map.of("site", sites(), "jar_type", jarTypes()));
    }

    FormDesign<OccupancyEntry> replacement(StringView string) {
        return new FormDesign<>(
                Sheets.OCCUPANCIES,
                "jar",
                Map.of("", List.of("position", "serial", "from", "jar_type", "reason")),
                Map.of("position", numbers(1, string.positions()), "jar_type", jarTypes()));
    }

    FormDesign<OccupancyEntry> occupancy(StringView string) {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        groups.put("", List.of("position", "jar_type", "serial"));
        groups.put("Its stay", List.of("from", "reason", "until", "left_reason"));
        groups.put("Baseline from a commissioning record", List.of("baseline_ohmic_mohm_or_s", "baseline_source"));
        return new FormDesign<>(
                Sheets.OCCUPANCIES,
                "jar",
                groups,
                Map.of("position", numbers(1, string.positions()), "jar_type", jarTypes()));
    }

    FormDesign<LinkEntry> link() {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        groups.put("", List.of("kind", "straps"));
        groups.put(
                "Cable", List.of("conductor_mm2_or_awg", "conductor_class", "conductor_m", "conductors_in_parallel"));
        return new FormDesign<>(
                Sheets.LINKS, "link", groups, Map.of("kind", words(LinkKind.values(), LinkKind::words)));
    }

    FormDesign<RemakeEntry> remake(StringView string) {
        return new FormDesign<>(
                Sheets.REMAKES,
                "remake",
                Map.of("", List.of("link", "remade_on", "as_found_uohm", "as_left_uohm", "note")),
                Map.of("link", numbers(0, string.positions())));
    }

    private Map<String, String> areas() {
        Map<String, String> words = new LinkedHashMap<>();
        for (AreaView area : register.areas()) {
            words.put(area.code(), area.code() + " · " + area.name());
        }
        return words;
    }

    private Map<String, String> sites() {
        Map<String, String> words = new LinkedHashMap<>();
        for (SiteView site : register.sites()) {
            words.put(site.code(), site.code() + " · " + site.name());
        }
        return words;
    }

    private Map<String, String> jarTypes() {
        Map<String, String> words = new LinkedHashMap<>();
        for (JarTypeView type : register.jarTypes()) {
            words.put(type.code(), type.code() + (type.retiredOn() == null ? "" : " (retired)"));
        }
        return words;
    }

    private static Map<String, String> zones() {
        return new TreeSet<>(ZoneId.getAvailableZoneIds())
                .stream()
                        .filter(zone -> zone.contains("/") && !zone.startsWith("Etc/") && !zone.startsWith("SystemV/"))
                        .collect(Collectors.toMap(zone -> zone, zone -> zone, (one, other) -> one, LinkedHashMap::new));
    }

    private static <E extends Enum<E>> Map<String, String> words(E[] values, Function<E, String> word) {
        Map<String, String> words = new LinkedHashMap<>();
        for (E value : values) {
            words.put(value.name(), word.apply(value));
        }
        return words;
    }

    private static Map<String, String> numbers(int first, int last) {
        Map<String, String> words = new LinkedHashMap<>();
        for (int number = first; number <= last; number++) {
            String end = first == 0 && number == 0 ? " (+)" : first == 0 && number == last ? " (−)" : "";
            words.put(String.valueOf(number), number + end);
        }
        return words;
    }
}
