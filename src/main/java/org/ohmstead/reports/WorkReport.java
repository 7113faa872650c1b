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
import org.ohmstead.assessment.Asked;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.Overruling;
import org.ohmstead.assessment.StringStanding;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Urgency;
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
import org.springframework.stereotype.Component;

/** What judgements and rules ask of people now, and whether a round is planned that goes there. */
@Component
class WorkReport implements ReportMaker {

    private static final int DAYS_AHEAD = 60;
    private static final int ROUNDS_AHEAD_DAYS = 400;

    private final Scene scene;
    private final Assessments assessments;
    private final Overruling overruling;
    private final Programme programme;
    private final Rounds rounds;

    WorkReport(Scene scene, Assessments assessments, Overruling overruling, Programme programme, Rounds rounds) {
        this.scene = scene;
        this.assessments = assessments;
        this.overruling = overruling;
        this.programme = programme;
        this.rounds = rounds;
    }

    @Override
    public ReportKind kind() {
        return ReportKind.WORK;
    }

    /**
     * @param rank the lower the sooner: overdue duties stand beside what asks for action
     * @param by null when no day is asked
     */
    private record Item(
            StringView string,
            int rank,
            String what,
            String asks,
            @Nullable LocalDate by,
            String why) {}

    @Override
    public MadeReport make(ReportWish wish) {
        Scene.Scope scope = scene.of(wish.area());
        Map<Long, StringView> strings =
                scope.strings().stream().collect(Collectors.toMap(StringView::id, Function.identity()));
        List<Item> items = new ArrayList<>();
        for (StringStanding standing : assessments.standings()) {
            StringView string = strings.get(standing.stringId());
            if (string != null && standing.urgency() != Urgency.CLEAR) {
                assessments.find(string.id()).ifPresent(view -> judged(string, view.judgement(), items));
            }
        }
        programme.eachOfEstate(null, duties -> due(strings.get(duties.stringId()), duties, items));
        items.sort(Comparator.comparingInt(Item::rank)
                .thenComparing(Item::by, Comparator.nullsLast(Comparator.naturalOrder()))
                .thenComparing(item -> item.string().title())
                .thenComparing(Item::what));
        Map<Long, LocalDate> planned = planned(scope.asOf());
        Report report = new Report(
                kind().title() + (wish.area() == null ? "" : " of area " + wish.area()),
                scope.asOf(),
                List.of(
                        scope.scopeFact(),
                        new Fact("As of", scope.asOf().toString()),
                        scope.zoneFact(),
                        new Fact("Asked", items.size() + " things at " + places(items) + " strings"),
                        new Fact(
                                "Names",
                                "jars, links and strings that ask for something, and duties that are missed or due"
                                        + " within " + DAYS_AHEAD + " days")),
                List.of(section(scope, items, planned)),
                Phrases.NO_PROOF);
        return new MadeReport(report, "Work", scope.fileName(kind()));
    }

    private static long places(List<Item> items) {
        return items.stream().map(item -> item.string().id()).distinct().count();
    }

    private void judged(StringView string, StringJudgement judgement, List<Item> items) {
        Asked asked = overruling.asked(judgement);
        for (JarJudgement jar : judgement.jars()) {
            add(items, string, "jar " + jar.position(), asked.urgency(jar), jar.reasons(), judgement.recheckBy());
        }
        for (LinkJudgement link : judgement.links()) {
            String name = "link " + Phrases.link(link.ordinal(), string.positions());
            add(items, string, name, asked.urgency(link), link.reasons(), judgement.recheckBy());
        }
        Urgency whole = judgement.reasons().stream().map(Reason::asks).reduce(Urgency.CLEAR, Urgency::or);
        Urgency heard = asked.ofString().isPresent() ? asked.urgency() : whole;
        add(items, string, "the string", heard, judgement.reasons(), judgement.recheckBy());
    }

    private static void add(
            List<Item> items,
            StringView string,
            String what,
            Urgency urgency,
            List<Reason> reasons,
            @Nullable LocalDate recheckBy) {
        if (urgency != Urgency.CLEAR) {
            int rank = Urgency.ACT.ordinal() - urgency.ordinal();
            items.add(new Item(string, rank, what, urgency.word(), recheckBy, Phrases.asked(reasons)));
        }
    }

    private void due(@Nullable StringView string, StringDuties duties, List<Item> items) {
        if (string == null) {
            return;
        }
        for (Duty duty : duties.duties()) {
            LocalDate due = duty.dueOn();
            if (due != null
                    && !due.isAfter(duties.asOf().plusDays(DAYS_AHEAD))
                    && duty.state().isOpen()) {
                boolean overdue = duty.state() == DutyState.MISSED || due.isBefore(duties.asOf());
                items.add(new Item(
                        string,
                        overdue ? 0 : 1,
                        duty.requirement().activity(),
                        overdue ? "overdue" : "due",
                        due,
                        duty.reason()));
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

    private static Section section(Scene.Scope scope, List<Item> items, Map<Long, LocalDate> planned) {
        return new Section(
                "Work",
                items.isEmpty() ? "Nothing is asked of anybody." : "The most urgent first.",
                List.of(
                        Column.words("Area", 10),
                        Column.words("String", 12),
                        Column.words("What", 30),
                        Column.words("Asks", 9),
                        Column.words("By", 10),
                        Column.words("Next round there", 10),
                        Column.words("Why", 60)),
                items.stream()
                        .map(item -> List.of(
                                Cell.of(scope.site(item.string()).areaCode()),
                                Cell.of(item.string().title()),
                                Cell.of(item.what()),
                                Cell.of(item.asks()),
                                Cell.of(item.by()),
                                Cell.of(planned.get(item.string().id())),
                                Cell.of(item.why())))
                        .toList());
    }
}
