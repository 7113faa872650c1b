package org.ohmstead.overview;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.LinkName;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;
import org.ohmstead.kernel.Urgency;

/** Invented pages to look at, of any size, always the same. */
public final class Invented {

    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOW = Instant.parse("2026-11-25T08:00:00Z");
    private static final String[] SITES = {
        "Harrow Fell", "Skell Moor", "Kirkby Stone", "Dunmere", "Ashgill", "Low Rigg", "Saltcote", "Marram Point",
                "Holm Dyke",
        "Sandwath", "Pilot Row", "Gullhaven", "Foundry", "Priory Gate", "Long Acre", "Copper Yard", "Bell Hill",
                "Ropewalk"
    };

    private Invented() {}

    public static StringTile tile(long id, Urgency urgency, Integer daysToDue) {
        Technology technology = Technology.values()[(int) (id % 4)];
        String site = SITES[(int) (id / 2 % SITES.length)] + (id < 36 ? "" : " " + id / 36);
        String headline = urgency == Urgency.CLEAR
                ? "Nothing asks for attention in 60 jars and their links."
                : urgency.word()
                        + ": jar 17 – 41 % over its baseline and climbing 9 % a year; volts normal. And 2 more.";
        LocalDate due = daysToDue == null ? null : TODAY.plusDays(daysToDue);
        return new StringTile(
                id,
                "S-" + id / 2,
                site,
                id % 2 == 0 ? "A" : "B",
                technology,
                urgency,
                headline,
                due,
                daysToDue,
                "A re-reading is asked for.");
    }

    public static List<StringTile> tiles(int strings) {
        Random random = new Random(7);
        List<StringTile> tiles = new ArrayList<>();
        for (int i = 0; i < strings; i++) {
            double u = random.nextDouble();
            Urgency urgency =
                    u > 0.985 ? Urgency.ACT : u > 0.95 ? Urgency.PLAN : u > 0.88 ? Urgency.RECHECK : Urgency.CLEAR;
            tiles.add(tile(i, urgency, urgency == Urgency.ACT ? 2 : (int) (random.nextDouble() * 330) - 8));
        }
        return tiles;
    }

    public static EstateView estate(int strings) {
        List<StringTile> tiles = tiles(strings);
        Map<String, List<StringTile>> byArea = new LinkedHashMap<>();
        String[] areas = {"Fellside", "Estuary", "Midvale", "Hightown"};
        tiles.forEach(t -> byArea.computeIfAbsent(areas[(int) (t.stringId() * 4 / strings)], a -> new ArrayList<>())
                .add(t));
        return new EstateView(
                EstateSentence.of(tiles, TODAY),
                EstateCounts.of(tiles, 4, Math.max(1, strings / 2), 60L * strings),
                Wall.of(byArea),
                FirstInLine.of(tiles, 5),
                strings < 10
                        ? List.of()
                        : List.of(new EstateView.Held(
                                "5f0c7a52-0000-4000-8000-000000000001",
                                "Cold Tarn · A",
                                NOW,
                                "Jar 24 has no values: the closing reading was left out.")),
                new EstateView.Week(
                        strings < 10 ? 0 : 9,
                        strings < 10 ? 0 : 7,
                        strings < 10
                                ? List.of()
                                : List.of(
                                        new EstateView.Visit(1, 1, "Saltcote · A", TODAY, "Crew 3"),
                                        new EstateView.Visit(2, 4, "Ashgill · A", TODAY.minusDays(2), "Crew 1"))),
                Map.of(),
                NOW);
    }

    public static StringPage string(int jars, int tiers) {
        Random random = new Random(3);
        List<JarLine> lines = new ArrayList<>();
        for (int p = 1; p <= jars; p++) {
            Urgency urgency = p == 17
                    ? Urgency.ACT
                    : p == 34 ? Urgency.PLAN : p == 9 || p == 48 ? Urgency.RECHECK : Urgency.CLEAR;
            double change = p == 17
                    ? 0.41
                    : p == 34 ? 0.23 : p == 48 ? 0.17 : p == 9 ? -0.12 : random.nextGaussian() * 0.02 + 0.02;
            lines.add(jar(p, urgency, p == 22 ? null : change));
        }
        List<LinkLine> links = new ArrayList<>();
        for (int k = 0; k <= jars; k++) {
            LinkKind kind = k == 0 || k == jars
                    ? LinkKind.TERMINAL
                    : k % (jars / tiers) == 0 ? LinkKind.TIER_CABLE : LinkKind.STRAP;
            Urgency urgency = k == 9 ? Urgency.ACT : k == 53 || k == 10 ? Urgency.RECHECK : Urgency.CLEAR;
            links.add(link(k, jars, kind, urgency, k == 9 ? 74.2 : k == 53 ? 26 : 17 + random.nextGaussian() * 1.5));
        }
        return new StringPage(plate(jars, tiers), judged(lines, links), due(), lines, links, surveys(jars));
    }

    private static StringPage.Plate plate(int jars, int tiers) {
        return new StringPage.Plate(
                2,
                "B",
                "FEL-01",
                "Harrow Fell",
                "Fellside",
                ZoneId.of("Europe/London"),
                "VLA-400",
                jars + " jars, vented lead-acid, 2 V, 400 Ah, in " + tiers + " tiers",
                java.util.Collections.nCopies(tiers, jars / tiers),
                LocalDate.of(2012, 3, 8),
                null);
    }

    private static StringPage.Judged judged(List<JarLine> jars, List<LinkLine> links) {
        return new StringPage.Judged(
                Urgency.ACT,
                StringSentence.of("B", Urgency.ACT, jars, links),
                LocalDate.of(2026, 11, 18),
                NOW,
                List.of(new Why(
                        Urgency.RECHECK,
                        "The string runs 4 K above the baseline survey.",
                        "A survey at the usual temperature.")),
                List.of(
                        "Remake link 9|10 and re-measure it within seven days.",
                        "Replace jar 17, or prove its capacity first."),
                List.of("Another test set was used than for the baseline."),
                List.of(
                        new StringPage.Fact("Jars, sum", "24.6 mΩ", null),
                        new StringPage.Fact("Links, sum", "1.12 mΩ", null),
                        new StringPage.Fact("Voltage step at 120 A", "3.1 V", "estimate"),
                        new StringPage.Fact("Age", "14.7 years", "73 % of its derated life")),
                Urgency.ACT,
                null);
    }

    private static StringPage.Due due() {
        return new StringPage.Due(
                LocalDate.of(2026, 11, 27),
                2,
                "RECHECK",
                "Jar 17 and link 9|10 are to be read again.",
                LocalDate.of(2027, 3, 31),
                null);
    }

    private static JarLine jar(int position, Urgency urgency, Double change) {
        List<Why> why = urgency == Urgency.CLEAR
                ? List.of()
                : List.of(new Why(
                        urgency,
                        "41 % over its baseline of 0.412 mΩ; the limit is 30 %.",
                        "A reading under 0.536 mΩ."));
        return new JarLine(
                position,
                "J" + (4700 + position),
                LocalDate.of(2012, 3, 8),
                urgency,
                LocalDate.of(2026, 11, 18),
                OhmicKind.RESISTANCE,
                change == null ? null : 0.412 * (1 + change),
                0.412,
                "survey after settling, 2012-09-14",
                change,
                change,
                0.011,
                2.247,
                21.0,
                why,
                null,
                null);
    }

    private static LinkLine link(int ordinal, int jars, LinkKind kind, Urgency urgency, double net) {
        List<Why> why = urgency == Urgency.CLEAR
                ? List.of()
                : List.of(new Why(
                        urgency,
                        "74 µΩ net, 2.6 times the average of its kind.",
                        "A reading under 34 µΩ after a remake."));
        return new LinkLine(
                ordinal,
                LinkName.shortly(ordinal, jars),
                LinkName.of(ordinal, jars),
                kind,
                LocalDate.of(2012, 3, 8),
                urgency,
                LocalDate.of(2026, 11, 18),
                net + (kind.isCable() ? 180 : 0),
                kind.isCable() ? 180.0 : null,
                net,
                17.1,
                net / 17.1 - 1,
                net / 17.4 - 1,
                net * 0.12,
                net * 0.0144,
                why,
                null,
                null);
    }

    private static List<StringPage.SurveyLine> surveys(int jars) {
        List<StringPage.SurveyLine> lines = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            lines.add(new StringPage.SurveyLine(
                    100 - i, LocalDate.of(2026, 11, 18).minusMonths(6L * i), "Crew 3", "TS-204", jars, jars));
        }
        return lines;
    }

    public static StringHistoryView history(int surveys, int jars) {
        Random random = new Random(11);
        double[][] change = new double[surveys][jars];
        boolean[][] replaced = new boolean[surveys][jars];
        List<LocalDate> days = new ArrayList<>();
        for (int s = 0; s < surveys; s++) {
            days.add(LocalDate.of(2019, 1, 15).plusMonths(3L * s));
            for (int p = 0; p < jars; p++) {
                change[s][p] = random.nextGaussian() * 0.025
                        + (p == 16 ? Math.max(0, s - 14) * 0.026 : p % 7 == 3 ? s * 0.003 : 0);
                if (p == 24) {
                    change[s][p] = s < 20 ? s * 0.016 : random.nextGaussian() * 0.02;
                    replaced[s][p] = s == 20;
                }
            }
            change[s][5] = s == 8 ? Double.NaN : change[s][5];
        }
        return new StringHistoryView(days, change, replaced);
    }

    public static UnitPage jarLife() {
        List<UnitPage.Reading> readings = new ArrayList<>();
        for (int s = 0; s < 24; s++) {
            Double value = s == 7 ? null : s < 10 ? 0.41 + s * 0.02 : 0.405 + (s - 10) * (s - 10) * 0.001;
            readings.add(new UnitPage.Reading(
                    s + 1,
                    LocalDate.of(2015, 2, 3).plusMonths(6L * s),
                    value,
                    value == null ? null : value / 0.41 - 1,
                    2.247,
                    21.0));
        }
        return new UnitPage(
                plate(60, 3),
                "Jar 17",
                Urgency.ACT,
                "mΩ",
                List.of(new StringPage.Fact("Baseline", "0.412 mΩ", "survey after settling")),
                List.of(new Why(
                        Urgency.ACT,
                        "41 % over its baseline of 0.412 mΩ; the limit is 30 %.",
                        "A reading under 0.536 mΩ.")),
                List.of(
                        new UnitPage.Spell(
                                "Jar 4717", LocalDate.of(2012, 3, 8), LocalDate.of(2020, 1, 10), "Dried out"),
                        new UnitPage.Spell("Jar 5201", LocalDate.of(2020, 1, 10), null, "")),
                readings,
                0.41,
                "/strings/2/jars/16",
                "/strings/2/jars/18",
                null,
                null);
    }
}
