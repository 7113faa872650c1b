package org.ohmstead.reports;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.Section;
import org.ohmstead.reports.render.Section.Column;
import org.ohmstead.worklist.UnresolvedWork;
import org.ohmstead.worklist.WorkEventView;
import org.ohmstead.worklist.model.Evidence;

/** What was open on the work list at the end of a day, as a section of a report. */
final class UnresolvedTable {

    static final String TITLE = "Work unresolved";

    private UnresolvedTable() {}

    static Section of(LocalDate on, List<UnresolvedWork> unresolved) {
        return new Section(
                TITLE,
                unresolved.isEmpty()
                        ? "No item of the work list was open at the end of " + on + "."
                        : "What was open on the work list at the end of " + on
                                + ", as it stood then, with the evidence of effort.",
                List.of(
                        Column.words("String", 11),
                        Column.words("Work", 13),
                        Column.words("What", 15),
                        Column.words("State then", 8),
                        Column.words("Asked", 8),
                        Column.words("By", 10),
                        Column.words("Who", 12),
                        Column.words("Raised on", 10),
                        Column.words("Why", 40),
                        Column.words("Evidence of effort", 60)),
                unresolved.stream()
                        .map(one -> List.of(
                                Cell.of(one.string()),
                                Cell.of(one.kind().words()),
                                Cell.of(one.what()),
                                Cell.of(one.state().word()),
                                Cell.of(one.urgency().word()),
                                Cell.of(one.by()),
                                Cell.of(one.assignee()),
                                Cell.of(one.raisedOn()),
                                Cell.of(one.reason()),
                                Cell.of(effort(one.effort()))))
                        .toList());
    }

    /** "2026-03-10 planned for 2026-04-20 by engineer: no outage before; ...". */
    private static String effort(List<WorkEventView> events) {
        return events.stream().map(UnresolvedTable::words).collect(Collectors.joining("; "));
    }

    private static String words(WorkEventView event) {
        Evidence evidence = event.evidence();
        return event.on()
                + " " + event.kind().words()
                + (event.day() == null ? "" : " (" + event.day() + ")")
                + " by " + event.by()
                + (event.note().isEmpty() || event.note().equals(event.reason()) ? "" : ": " + event.note())
                + (evidence == null ? "" : " [" + evidence.words() + "]");
    }
}
