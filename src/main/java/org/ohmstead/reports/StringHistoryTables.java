package org.ohmstead.reports;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.OccupancyView;
import org.ohmstead.fleet.RemakeView;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyRecord;
import org.ohmstead.programme.StringDuties;
import org.ohmstead.programme.rules.Duty;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.Section;
import org.ohmstead.reports.render.Section.Column;

/** What happened to a string, as tables. */
final class StringHistoryTables {

    private StringHistoryTables() {}

    /** The latest first, withdrawn ones among them. */
    static Section surveys(List<SurveyRecord> surveys) {
        List<List<Cell>> rows = surveys.stream()
                .sorted(Comparator.comparing(
                                (SurveyRecord survey) -> survey.facts().takenAt())
                        .reversed())
                .map(StringHistoryTables::survey)
                .toList();
        return new Section(
                "Surveys",
                rows.isEmpty() ? "It was never surveyed." : "The latest first.",
                List.of(
                        Column.number("Survey", 7),
                        Column.words("Taken on", 10),
                        Column.words("By", 14),
                        Column.words("Instrument", 14),
                        Column.words("Kind", 11),
                        Column.number("Median ohmic value", 9),
                        Column.words("Unit", 5),
                        Column.number("Jars read", 7),
                        Column.number("String V", 8),
                        Column.number("Ambient °C", 8),
                        Column.words("Note", 24)),
                rows);
    }

    private static List<Cell> survey(SurveyRecord survey) {
        SurveyFacts facts = survey.facts();
        double[] read = Arrays.stream(survey.readings().ohmic())
                .filter(value -> !Double.isNaN(value))
                .sorted()
                .toArray();
        String withdrawn = survey.stands() ? "" : "Withdrawn; it does not count. ";
        return List.of(
                Cell.of(survey.id()),
                Cell.of(facts.takenOn()),
                Cell.of(facts.takenBy()),
                Cell.of(facts.instrument()),
                Cell.of(facts.ohmicKind().words()),
                Cell.of(median(read), 3),
                Cell.of(facts.ohmicKind().unit()),
                Cell.of(read.length),
                Cell.of(facts.stringVolts(), 1),
                Cell.of(facts.ambientCelsius(), 0),
                Cell.of(withdrawn + facts.note()));
    }

    private static @Nullable Double median(double[] sorted) {
        if (sorted.length == 0) {
            return null;
        }
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    private record Change(LocalDate on, List<Cell> cells) {}

    /** Jars exchanged and links made again, the latest first; the jars of the first day are not named. */
    static Section changes(StringBlueprint blueprint) {
        List<Change> changes = new ArrayList<>();
        LocalDate first = blueprint.string().inServiceOn();
        for (OccupancyView jar : blueprint.occupancies()) {
            if (jar.during().from().isAfter(first)) {
                changes.add(change(
                        jar.during().from(),
                        "position " + jar.position(),
                        jar.jar() + ", " + jar.jarTypeCode() + " was placed" + because(jar.reason())));
            }
            LocalDate until = jar.during().until();
            if (until != null) {
                changes.add(change(
                        until, "position " + jar.position(), jar.jar() + " was taken out" + because(jar.leftReason())));
            }
        }
        for (RemakeView remake : blueprint.remakes()) {
            changes.add(change(
                    remake.remadeOn(),
                    "link " + Phrases.link(remake.ordinal(), blueprint.string().positions()),
                    "made again" + microohms(", found ", remake.asFoundMicroohms())
                            + microohms(", left ", remake.asLeftMicroohms()) + because(remake.note())));
        }
        changes.sort(Comparator.comparing(Change::on).reversed());
        return new Section(
                "Changes",
                changes.isEmpty() ? "No jar was exchanged and no link made again." : "The latest first.",
                List.of(Column.words("Day", 10), Column.words("Where", 20), Column.words("What", 80)),
                changes.stream().map(Change::cells).toList());
    }

    private static Change change(LocalDate on, String where, String what) {
        return new Change(on, List.of(Cell.of(on), Cell.of(where), Cell.of(what)));
    }

    private static String because(String reason) {
        return reason.isEmpty() ? "" : ": " + reason;
    }

    private static String microohms(String before, @Nullable Double value) {
        return value == null ? "" : before + String.format(Locale.ROOT, "%.1f µΩ", value);
    }

    static Section duties(StringDuties duties) {
        String pack = duties.pack() == null
                ? "No rule pack is in force."
                : "Under " + duties.pack().code() + " " + duties.pack().version() + ", as of " + duties.asOf() + ".";
        return new Section(
                "Duties",
                pack,
                List.of(
                        Column.words("Activity", 46),
                        Column.words("Last done", 10),
                        Column.words("Due", 10),
                        Column.words("State", 10),
                        Column.words("Why", 50)),
                duties.duties().stream().map(StringHistoryTables::duty).toList());
    }

    private static List<Cell> duty(Duty duty) {
        return List.of(
                Cell.of(duty.requirement().activity()),
                duty.lastDone() == null ? Cell.NONE : Cell.of(duty.lastDone().doneOn()),
                Cell.of(duty.dueOn()),
                Cell.of(duty.state().words()),
                Cell.of(duty.reason()));
    }
}
