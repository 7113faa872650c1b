package org.ohmstead.reports;

import java.io.ByteArrayOutputStream;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.CsvForm;
import org.ohmstead.reports.render.Report;
import org.ohmstead.reports.render.Report.Fact;
import org.ohmstead.reports.render.Section;
import org.ohmstead.reports.render.Section.Column;

/** The compliance summary as a report. */
final class ComplianceTables {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm 'UTC'", Locale.UK).withZone(ZoneOffset.UTC);
    private static final List<DutyState> STATES = Arrays.asList(DutyState.values());
    private static final int SHOWN_CHANGES = 200;

    private ComplianceTables() {}

    /** With all that is known of each line. */
    static Report report(ComplianceSummary summary) {
        return report(summary, lines(summary.lines()));
    }

    /** With what fits on a sheet of paper. */
    static Report printed(ComplianceSummary summary) {
        return report(summary, printedLines(summary.lines()));
    }

    private static Report report(ComplianceSummary summary, Section lines) {
        return new Report(
                "Compliance summary " + summary.quarter(),
                summary.asOf(),
                facts(summary),
                Stream.concat(
                                changes(summary),
                                Stream.of(
                                        exceptions(summary),
                                        UnresolvedTable.of(summary.asOf(), summary.unresolved()),
                                        byArea(summary),
                                        totals(summary),
                                        lines))
                        .toList(),
                "This summary shows when activities were done. Ohmic values show change, not capacity; only a capacity"
                        + " test shows capacity. Compare recalled requirements with your edition of the standard.");
    }

    /** The lines as CSV: what is hashed, signed and compared. */
    static byte[] canonical(List<ComplianceLine> lines) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CsvForm.write(lines(lines), out);
        return out.toByteArray();
    }

    private static List<Fact> facts(ComplianceSummary summary) {
        String zones = summary.lines().stream()
                .map(ComplianceLine::timeZone)
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
        String states = STATES.stream()
                .map(state -> summary.count(state) + " " + state.words())
                .collect(Collectors.joining(", "));
        return List.of(
                new Fact(
                        "Quarter",
                        summary.quarter().first() + " to " + summary.quarter().last()),
                new Fact("Scope", summary.area() == null ? "all areas in reach" : "area " + summary.area()),
                new Fact(
                        "As of",
                        summary.asOf() + (summary.isOver() ? ", the quarter's last day" : "; the quarter runs on")),
                new Fact("Days are of", zones.isEmpty() ? "no site" : "each site's own calendar: " + zones),
                new Fact("States", states),
                new Fact("Fingerprint", "SHA-256 over the lines as CSV: " + summary.sha256()),
                new Fact("Sign-off", signature(summary)));
    }

    private static String signature(ComplianceSummary summary) {
        SignOff signed = summary.signOff();
        if (signed == null) {
            return "not signed";
        }
        String words = "signed by " + signed.signedBy() + ", " + TIME.format(signed.signedAt())
                + (signed.note().isEmpty() ? "" : ": " + signed.note());
        return signed.isUnchanged()
                ? words + ". Unchanged since."
                : words + ". CHANGED SINCE: " + signed.gone().size() + " signed lines no longer stand so, "
                        + signed.come().size() + " lines are new; see \"Changed since signed\".";
    }

    private static Section byArea(ComplianceSummary summary) {
        List<Column> columns = new ArrayList<>(List.of(Column.words("Area", 30)));
        STATES.forEach(state -> columns.add(Column.number(state.words(), 8)));
        List<List<Cell>> rows = summary.byArea().stream()
                .map(area -> Stream.concat(
                                Stream.of(Cell.of(area.name())),
                                STATES.stream().map(state -> Cell.of(area.count(state))))
                        .toList())
                .toList();
        return new Section("By area", "How many spans stand how.", columns, rows);
    }

    private static Section totals(ComplianceSummary summary) {
        List<Column> columns = new ArrayList<>(List.of(
                Column.words("Area", 8),
                Column.words("Rule pack", 18),
                Column.words("Activity", 34),
                Column.words("Clause", 16)));
        STATES.forEach(state -> columns.add(Column.number(state.words(), 8)));
        List<List<Cell>> rows = summary.totals().stream()
                .map(total -> Stream.concat(
                                Stream.of(total.area(), total.pack(), total.activity(), total.clause())
                                        .map(Cell::of),
                                STATES.stream().map(state -> Cell.of(total.count(state))))
                        .toList())
                .toList();
        return new Section("Totals", "How often each requirement was met, by area.", columns, rows);
    }

    private static Section exceptions(ComplianceSummary summary) {
        List<ComplianceLine> found = summary.exceptions();
        List<List<Cell>> rows = found.stream()
                .map(line -> List.of(
                        Cell.of(line.area()),
                        Cell.of(line.site() + " / " + line.string()),
                        Cell.of(line.activity()),
                        Cell.of(line.dueOn()),
                        Cell.of(line.ownDueOn()),
                        Cell.of(line.doneOn()),
                        Cell.of(words(line)),
                        Cell.of(line.reason())))
                .toList();
        return new Section(
                "Exceptions",
                found.isEmpty() ? "None: everything due was done on time." : "Late, missed or waived, with the reason.",
                List.of(
                        Column.words("Area", 8),
                        Column.words("String", 14),
                        Column.words("Activity", 26),
                        Column.words("Due", 9),
                        Column.words("Own due", 9),
                        Column.words("Done", 9),
                        Column.words("State", 13),
                        Column.words("Reason", 40)),
                rows);
    }

    private static String words(ComplianceLine line) {
        return line.ownState() == null || line.ownState() == line.state()
                ? line.state().words()
                : line.state().words() + "; own interval: " + line.ownState().words();
    }

    private static Stream<Section> changes(ComplianceSummary summary) {
        SignOff signed = summary.signOff();
        if (signed == null || signed.isUnchanged()) {
            return Stream.empty();
        }
        List<List<Cell>> rows = Stream.concat(
                        signed.gone().stream().map(line -> List.of(Cell.of("was signed"), Cell.of(line))),
                        signed.come().stream().map(line -> List.of(Cell.of("stands now"), Cell.of(line))))
                .limit(SHOWN_CHANGES)
                .toList();
        return Stream.of(new Section(
                "Changed since signed",
                "The first " + SHOWN_CHANGES + " at most.",
                List.of(Column.words("Which", 10), Column.words("Line", 110)),
                rows));
    }

    private static Section lines(List<ComplianceLine> lines) {
        return new Section(
                "Lines",
                lines.isEmpty()
                        ? "No string in reach is under a rule pack in this quarter."
                        : "Every span that fell due or was done in the quarter, and those that run.",
                List.of(
                        Column.words("Area", 8),
                        Column.words("Site", 9),
                        Column.words("Time zone", 11),
                        Column.words("String", 7),
                        Column.words("Rule pack", 13),
                        Column.words("Requirement", 13),
                        Column.words("Activity", 24),
                        Column.words("Clause", 11),
                        Column.words("Source", 12),
                        Column.words("Interval", 11),
                        Column.words("Last done", 10),
                        Column.words("Due", 10),
                        Column.words("Own due", 10),
                        Column.words("Done", 10),
                        Column.words("State", 8),
                        Column.words("Own state", 8),
                        Column.words("Evidence", 12),
                        Column.words("Reason", 24)),
                lines.stream().map(ComplianceTables::cells).toList());
    }

    private static Section printedLines(List<ComplianceLine> lines) {
        List<List<Cell>> rows = lines.stream()
                .map(line -> List.of(
                        Cell.of(line.site() + " / " + line.string()),
                        Cell.of(line.activity()),
                        Cell.of(line.interval()),
                        Cell.of(line.lastDoneOn()),
                        Cell.of(line.dueOn()),
                        Cell.of(line.ownDueOn()),
                        Cell.of(line.doneOn()),
                        Cell.of(words(line)),
                        Cell.of(line.evidence())))
                .toList();
        return new Section(
                "Lines",
                lines.isEmpty()
                        ? "No string in reach is under a rule pack in this quarter."
                        : "Every span that fell due or was done in the quarter, and those that run.",
                List.of(
                        Column.words("String", 14),
                        Column.words("Activity", 34),
                        Column.words("Interval", 16),
                        Column.words("Last done", 10),
                        Column.words("Due", 10),
                        Column.words("Own due", 10),
                        Column.words("Done", 10),
                        Column.words("State", 14),
                        Column.words("Evidence", 18)),
                rows);
    }

    private static List<Cell> cells(ComplianceLine line) {
        return List.of(
                Cell.of(line.area()),
                Cell.of(line.site()),
                Cell.of(line.timeZone()),
                Cell.of(line.string()),
                Cell.of(line.pack()),
                Cell.of(line.requirement()),
                Cell.of(line.activity()),
                Cell.of(line.clause()),
                Cell.of(line.provenance()),
                Cell.of(line.interval()),
                Cell.of(line.lastDoneOn()),
                Cell.of(line.dueOn()),
                Cell.of(line.ownDueOn()),
                Cell.of(line.doneOn()),
                Cell.of(line.state().words()),
                Cell.of(line.ownState() == null ? "" : line.ownState().words()),
                Cell.of(line.evidence()),
                Cell.of(line.reason()));
    }
}
