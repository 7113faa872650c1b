package org.ohmstead.reports;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.StringView;
import org.ohmstead.programme.Programme;
import org.ohmstead.programme.RoundView;
import org.ohmstead.programme.Rounds;
import org.ohmstead.programme.StringDuties;
import org.ohmstead.programme.rules.Duty;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.reports.render.Cell;
import org.ohmstead.reports.render.Report;
import org.ohmstead.reports.render.Report.Fact;
import org.ohmstead.reports.render.Section;
import org.ohmstead.reports.render.Section.Column;
import org.ohmstead.worklist.UnresolvedWork;
import org.ohmstead.worklist.WorkFilter;
import org.ohmstead.worklist.WorkItemView;
import org.ohmstead.worklist.WorkList;
import org.springframework.stereotype.Component;

/** The work list on paper: what is open, which duties fall due next, and what was unresolved when the quarter ended. */
@Component
class WorkReport implements ReportMaker {

    private static final int DAYS_AHEAD = 60;
    private static final int ROUNDS_AHEAD_DAYS = 400;

    private final Scene scene;
    private final WorkList work;
    private final Programme programme;
    private final Rounds rounds;

    WorkReport(Scene scene, WorkList work, Programme programme, Rounds rounds) {
        this.scene = scene;
        this.work = work;
        this.programme = programme;
        this.rounds = rounds;
    }

    @Override
    public ReportKind kind() {
        return ReportKind.WORK;
    }

    private record Due(StringView string, Duty duty, LocalDate on) {}

    @Override
    public MadeReport make(ReportWish wish) {
        Scene.Scope scope = scene.of(wish.area());
        Map<Long, StringView> strings =
                scope.strings().stream().collect(Collectors.toMap(StringView::id, Function.identity()));
        List<WorkItemView> items = new ArrayList<>();
        work.each(WorkFilter.OPEN.ofArea(wish.area()), items::add);
        Quarter ended = Quarter.of(scope.asOf()).before();
        List<UnresolvedWork> unresolved = work.unresolved(ended.last(), wish.area());
        Report report = new Report(
                kind().title() + (wish.area() == null ? "" : " of area " + wish.area()),
                scope.asOf(),
                List.of(
                        scope.scopeFact(),
                        new Fact("As of", scope.asOf().toString()),
                        scope.zoneFact(),
                        new Fact("Open", items.size() + " items at " + places(items) + " strings"),
                        new Fact(
                                "Overdue",
                                String.valueOf(items.stream()
                                        .filter(WorkItemView::overdue)
                                        .count())),
                        new Fact("Unresolved at the end of " + ended, unresolved.size() + " items")),
                List.of(
                        open(items, planned(scope.asOf())),
                        falling(due(strings)),
                        UnresolvedTable.of(ended.last(), unresolved)),
                Phrases.NO_PROOF);
        return new MadeReport(report, "Work", scope.fileName(kind()));
    }

    private static long places(List<WorkItemView> items) {
        return items.stream().map(WorkItemView::stringId).distinct().count();
    }

    /** What is overdue stands on the list itself. */
    private List<Due> due(Map<Long, StringView> strings) {
        List<Due> all = new ArrayList<>();
        programme.eachOfEstate(null, duties -> due(strings.get(duties.stringId()), duties, all));
        all.sort(Comparator.comparing(Due::on)
                .thenComparing(due -> due.string().title())
                .thenComparing(due -> due.duty().requirement().code()));
        return all;
    }

    private static void due(@Nullable StringView string, StringDuties duties, List<Due> all) {
        for (Duty duty : duties.duties()) {
            LocalDate on = duty.dueOn();
            if (string != null
                    && on != null
                    && duty.state() == DutyState.DUE
                    && !on.isBefore(duties.asOf())
                    && !on.isAfter(duties.asOf().plusDays(DAYS_AHEAD))) {
                all.add(new Due(string, duty, on));
            }
        }
    }

    /** The next standing round that goes to each string and is not done. */
    private Map<Long, LocalDate> planned(LocalDate today) {
        Map<Long, LocalDate> planned = new HashMap<>();
        for (RoundView round : rounds.between(today, today.plusDays(ROUNDS_AHEAD_DAYS))) {
            if (round.cancelledBecause() == null && !round.isDone()) {
                round.stringIds().forEach(id -> planned.putIfAbsent(id, round.plannedOn()));
            }
        }
        return planned;
    }

    private static Section open(List<WorkItemView> items, Map<Long, LocalDate> planned) {
        return new Section(
                "Work",
                items.isEmpty()
                        ? "Nothing is asked of anybody."
                        : "The most urgent first. Done is proven only by a later reading.",
                List.of(
                        Column.words("Area", 9),
                        Column.words("String", 11),
                        Column.words("Work", 13),
                        Column.words("What", 15),
                        Column.words("State", 8),
                        Column.words("Asks", 8),
                        Column.words("By", 10),
                        Column.words("Overdue", 8),
                        Column.words("Who", 12),
                        Column.words("Planned or done on", 10),
                        Column.words("Next round there", 10),
                        Column.words("Why", 50)),
                items.stream()
                        .map(item -> List.of(
                                Cell.of(item.areaCode()),
                                Cell.of(item.string()),
                                Cell.of(item.kind().words()),
                                Cell.of(item.what()),
                                Cell.of(item.state().word()),
                                Cell.of(item.urgency().word()),
                                Cell.of(item.by()),
                                Cell.of(item.overdue() ? "yes" : ""),
                                Cell.of(item.assignee()),
                                Cell.of(item.doneOn() == null ? item.plannedOn() : item.doneOn()),
                                Cell.of(planned.get(item.stringId())),
                                Cell.of(item.reason())))
                        .toList());
    }

    private static Section falling(List<Due> due) {
        return new Section(
                "Falling due",
                due.isEmpty()
                        ? "No duty falls due within " + DAYS_AHEAD + " days."
                        : "Duties that fall due within " + DAYS_AHEAD + " days.",
                List.of(
                        Column.words("String", 12),
                        Column.words("Duty", 40),
                        Column.words("By", 10),
                        Column.words("Why", 50)),
                due.stream()
                        .map(one -> List.of(
                                Cell.of(one.string().title()),
                                Cell.of(one.duty().requirement().activity()),
                                Cell.of(one.on()),
                                Cell.of(one.duty().reason())))
                        .toList());
    }
}
