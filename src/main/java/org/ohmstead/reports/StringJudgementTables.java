package org.ohmstead.reports;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.Asked;
import org.ohmstead.assessment.model.Advice;
import org.ohmstead.assessment.model.Baseline;
import org.ohmstead.assessment.model.Doubt;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.assessment.model.UnitForecast;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.Section;
import org.ohmstead.reports.render.Section.Column;

/** The judgement of a string as tables. */
final class StringJudgementTables {

    private final StringBlueprint blueprint;
    private final StringJudgement judgement;
    private final Asked asked;

    StringJudgementTables(StringBlueprint blueprint, StringJudgement judgement, Asked asked) {
        this.blueprint = blueprint;
        this.judgement = judgement;
        this.asked = asked;
    }

    Section reasons() {
        List<List<Cell>> rows = new ArrayList<>();
        for (Reason reason : judgement.reasons()) {
            rows.add(List.of(
                    Cell.of(
                            reason.asks() == Urgency.CLEAR
                                    ? "note"
                                    : reason.asks().word()),
                    Cell.of(reason.words()),
                    Cell.of(reason.wouldChange())));
        }
        for (Doubt doubt : judgement.doubts()) {
            rows.add(List.of(Cell.of("doubt"), Cell.of(doubt.words()), Cell.NONE));
        }
        for (Advice advice : judgement.advice()) {
            rows.add(List.of(Cell.of("advice"), Cell.of(advice.words()), Cell.of(advice.rule())));
        }
        return new Section(
                "The string as a whole",
                rows.isEmpty() ? "Nothing is to be said of it." : "What was seen, how sure it is, and what to do.",
                List.of(
                        Column.words("What", 10),
                        Column.words("In words", 60),
                        Column.words("What would change it, or the rule", 40)),
                rows);
    }

    Section shortlist() {
        record Entry(Urgency urgency, int order, List<Cell> cells) {}
        List<Entry> entries = new ArrayList<>();
        for (JarJudgement jar : judgement.jars()) {
            Urgency urgency = asked.urgency(jar);
            if (urgency != Urgency.CLEAR) {
                String overruled = overruled(asked.ofJar(jar.position()).isPresent());
                entries.add(new Entry(
                        urgency,
                        jar.position(),
                        cells("jar " + jar.position(), urgency, jar.reasons(), jar.forecast(), overruled)));
            }
        }
        for (LinkJudgement link : judgement.links()) {
            Urgency urgency = asked.urgency(link);
            if (urgency != Urgency.CLEAR) {
                String overruled = overruled(asked.ofLink(link.ordinal()).isPresent());
                entries.add(new Entry(
                        urgency,
                        link.ordinal(),
                        cells("link " + name(link), urgency, link.reasons(), link.forecast(), overruled)));
            }
        }
        entries.sort(Comparator.comparing(Entry::urgency).reversed().thenComparing(Entry::order));
        return new Section(
                "Shortlist",
                entries.isEmpty() ? "No jar and no link asks for anything." : "Jars and links that ask for something.",
                List.of(
                        Column.words("Unit", 12),
                        Column.words("Urgency", 9),
                        Column.number("Chance of failing within a year %", 9),
                        Column.words("Crosses its limit", 24),
                        Column.words("Why", 56)),
                entries.stream().map(Entry::cells).toList());
    }

    private static String overruled(boolean yes) {
        return yes ? "Overruled. " : "";
    }

    private static List<Cell> cells(
            String unit, Urgency urgency, List<Reason> reasons, @Nullable UnitForecast forecast, String overruled) {
        return List.of(
                Cell.of(unit),
                Cell.of(urgency.word()),
                forecast == null ? Cell.NONE : Phrases.percent(forecast.chanceWithinYear(), 0),
                Cell.of(Phrases.crossing(forecast)),
                Cell.of(overruled + Phrases.asked(reasons)));
    }

    Section jars() {
        OhmicKind kind = judgement.jars().stream()
                .map(JarJudgement::ohmicKind)
                .filter(java.util.Objects::nonNull)
                .findFirst()
                .orElse(OhmicKind.IMPEDANCE);
        return new Section(
                "Jars",
                "As of the last survey. A change is against the jar's own baseline and against its like in the survey"
                        + (kind.risesWithAge() ? "." : "; of conductance that of its reciprocal."),
                List.of(
                        Column.number("Position", 9),
                        Column.words("Serial", 12),
                        Column.words("Since", 10),
                        Column.words("Read on", 10),
                        Column.number(kind.words() + " " + kind.unit(), 10),
                        Column.number("Baseline " + kind.unit(), 9),
                        Column.words("Baseline is", 26),
                        Column.number("Over baseline %", 8),
                        Column.number("Over its like %", 8),
                        Column.number("V", 7),
                        Column.number("°C", 6),
                        Column.number("Chance of failing within a year %", 9),
                        Column.words("Urgency", 9)),
                judgement.jars().stream().map(this::jar).toList());
    }

    private List<Cell> jar(JarJudgement jar) {
        Baseline baseline = jar.baseline();
        return List.of(
                Cell.of(jar.position()),
                Cell.of(jar.serial()),
                Cell.of(jar.sittingSince()),
                Cell.of(jar.readOn()),
                Cell.of(jar.ohmic(), 3),
                Cell.of(baseline == null ? null : baseline.value(), 3),
                Cell.of(baseline == null ? "" : baseline.words()),
                Phrases.percent(jar.changeOnBaseline(), 0),
                Phrases.percent(jar.changeOnMedian(), 0),
                Cell.of(jar.volts(), 3),
                Cell.of(jar.celsius(), 0),
                jar.forecast() == null
                        ? Cell.NONE
                        : Phrases.percent(jar.forecast().chanceWithinYear(), 0),
                Cell.of(asked.urgency(jar).word()));
    }

    Section links() {
        return new Section(
                "Links",
                "Straps in parallel. Net is without the cable's own resistance, where the cable is known.",
                List.of(
                        Column.words("Link", 16),
                        Column.words("Kind", 11),
                        Column.words("Made on", 10),
                        Column.words("Read on", 10),
                        Column.number("Post to post µΩ", 9),
                        Column.number("Net µΩ", 9),
                        Column.number("Over baseline %", 9),
                        Column.number("Over its kind %", 9),
                        Column.number("Drop at design current mV", 10),
                        Column.number("Heat W", 7),
                        Column.words("Urgency", 9)),
                judgement.links().stream().map(this::link).toList());
    }

    private List<Cell> link(LinkJudgement link) {
        return List.of(
                Cell.of(name(link)),
                Cell.of(link.kind().words()),
                Cell.of(link.madeOn()),
                Cell.of(link.readOn()),
                Cell.of(link.combinedMicroohms(), 1),
                Cell.of(link.netMicroohms(), 1),
                Phrases.percent(link.changeOnBaseline(), 0),
                Phrases.percent(link.changeOnKind(), 0),
                Cell.of(link.dropMillivolts(), 1),
                Cell.of(link.heatWatts(), 1),
                Cell.of(asked.urgency(link).word()));
    }

    private String name(LinkJudgement link) {
        return Phrases.link(link.ordinal(), blueprint.string().positions());
    }
}
