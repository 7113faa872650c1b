package org.ohmstead.demo;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.ohmstead.fleet.csv.AreaEntry;
import org.ohmstead.fleet.csv.SiteEntry;

/** The areas and sites of the invented utility. None of these places exists. */
final class Places {

    static final ZoneId ZONE = ZoneId.of("Europe/London");

    static final List<AreaEntry> AREAS = List.of(
            new AreaEntry("UPLAND", "Upland", null),
            new AreaEntry("ESTUARY", "Estuary", null),
            new AreaEntry("VALE", "Vale", null),
            new AreaEntry("OLDTOWN", "Old Town", null));

    /** Ten to an area; the code is the name's beginning and a number. */
    private static final List<List<String>> NAMES = List.of(
            List.of(
                    "Tarnwick Cross",
                    "Ollerbeck",
                    "Skelmoor",
                    "Grindrow Head",
                    "Hestholm",
                    "Quernside",
                    "Rothmire",
                    "Brackenlow",
                    "Wythe Fell",
                    "Kelderhow"),
            List.of(
                    "Saltmere",
                    "Ebbstone",
                    "Marram Point",
                    "Wrackham",
                    "Gullhythe",
                    "Tidewold",
                    "Sandrock Quay",
                    "Pellmouth",
                    "Oysterholt",
                    "Lanthorn Spit"),
            List.of(
                    "Millwarden",
                    "Appledell",
                    "Cobbleford",
                    "Withenhay",
                    "Barleymere",
                    "Larkhanger",
                    "Osiers End",
                    "Reedmarch",
                    "Plumtree Halt",
                    "Cresslow"),
            List.of(
                    "Tanners Rise",
                    "Bellgate",
                    "Foundry Row",
                    "Chandler Yard",
                    "Weighhouse",
                    "Gasholder Court",
                    "Corn Loft",
                    "Tramway Works",
                    "Millrace",
                    "Observatory Steps"));

    private static final List<String> CAUTIONS = List.of(
            "Key from the control centre; ring before entering.",
            "Two people. Eye wash left of the door.",
            "Track is soft after rain; last gate stays shut.",
            "Permit needed: battery room shares the relay room.");

    private Places() {}

    static List<SiteEntry> sites() {
        return IntStream.range(0, siteCount()).mapToObj(Places::site).toList();
    }

    static int siteCount() {
        return NAMES.stream().mapToInt(List::size).sum();
    }

    static int areaOf(int site) {
        return site / NAMES.get(0).size();
    }

    static String areaName(int site) {
        return AREAS.get(areaOf(site)).name();
    }

    static SiteEntry site(int number) {
        String name = NAMES.get(areaOf(number)).get(number % NAMES.get(0).size());
        return new SiteEntry(
                code(number, name),
                name,
                AREAS.get(areaOf(number)).code(),
                ZONE,
                null,
                null,
                Design.of(number).load(),
                CAUTIONS.get(number % CAUTIONS.size()),
                "",
                null);
    }

    static String code(int number) {
        return code(number, NAMES.get(areaOf(number)).get(number % NAMES.get(0).size()));
    }

    private static String code(int number, String name) {
        String start = name.replace(" ", "").substring(0, 3).toUpperCase(Locale.ROOT);
        return start + "-"
                + String.format(Locale.ROOT, "%02d", number % NAMES.get(0).size() + 1);
    }
}
