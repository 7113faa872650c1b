package org.ohmstead.worklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ohmstead.access.Access;
import org.ohmstead.assessment.Asked;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.OverruleView;
import org.ohmstead.assessment.OverrulesChanged;
import org.ohmstead.assessment.Overruling;
import org.ohmstead.assessment.StringAssessed;
import org.ohmstead.assessment.StringsAssessed;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.capacity.CapacityTestsChanged;
import org.ohmstead.intake.AcceptedRemarks;
import org.ohmstead.ledger.SurveyWithdrawn;
import org.ohmstead.programme.DutiesReckoned;
import org.ohmstead.programme.StringDuties;
import org.ohmstead.worklist.WorkPlaces.Place;
import org.ohmstead.worklist.model.DutyReckoning;
import org.ohmstead.worklist.model.JudgementWork;
import org.ohmstead.worklist.model.Overruled;
import org.ohmstead.worklist.model.Reckoning;
import org.ohmstead.worklist.model.RemarkWork;
import org.ohmstead.worklist.model.Seen;
import org.ohmstead.worklist.model.Step;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.Wants;
import org.ohmstead.worklist.model.WorkItem;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Keeps the work list up to date with every judgement, duty, capacity test and overrule, in their transactions, and every
 * night. What changes nothing writes nothing.
 */
@Component
class WorkKeeping {

    static final String ACTOR = "work list";

    private static final int CHUNK = 100;

    private final WorkTable table;
    private final WorkPlaces places;
    private final Demands demands;
    private final Assessments assessments;
    private final Overruling overruling;
    private final AcceptedRemarks remarks;
    private final Access access;
    private final TransactionTemplate transaction;

    WorkKeeping(
            WorkTable table,
            WorkPlaces places,
            Demands demands,
            Assessments assessments,
            Overruling overruling,
            AcceptedRemarks remarks,
            Access access,
            TransactionTemplate transaction) {
        this.table = table;
        this.places = places;
        this.demands = demands;
        this.assessments = assessments;
        this.overruling = overruling;
        this.remarks = remarks;
        this.access = access;
        this.transaction = transaction;
    }

    @EventListener
    void on(StringAssessed assessed) {
        reckon(List.of(assessed.judgement()));
    }

    @EventListener
    void on(StringsAssessed assessed) {
        reckon(assessed.strings().stream().map(StringAssessed::judgement).toList());
    }

    @EventListener
    void on(OverrulesChanged changed) {
        reckonAgain(List.of(changed.stringId()));
    }

    @EventListener
    void on(CapacityTestsChanged changed) {
        withdrawProof(table.provenByVoidedTests(changed.stringId()), "The capacity test was voided.");
        reckonAgain(List.of(changed.stringId()));
    }

    /** Before the string is judged anew without it. */
    @EventListener
    @Order(Ordered.HIGHEST_PRECEDENCE)
    void on(SurveyWithdrawn survey) {
        withdrawProof(table.provenBy(survey.surveyId()), "Survey " + survey.surveyId() + " does not count any more.");
    }

    /** Not before a string is judged: until then its history is still being brought in. */
    @EventListener
    void on(DutiesReckoned duties) {
        Set<Long> judged = places.judged(
                duties.strings().stream().map(StringDuties::stringId).toList());
        Map<Long, StringDuties> byString = duties.strings().stream()
                .filter(string -> judged.contains(string.stringId()))
                .collect(Collectors.toMap(StringDuties::stringId, Function.identity(), (one, other) -> other));
        follow(byString.keySet(), (stringId, items) -> {
            StringDuties string = Objects.requireNonNull(byString.get(stringId));
            return DutyReckoning.of(stringId, string.asOf(), string.duties(), items);
        });
    }

    /** Overrules, dismissals and capacity tests run out by themselves. Some strings a transaction. */
    void reckonEstate() {
        access.asSystem(ACTOR, () -> {
            List<Long> all = places.judged();
            for (int from = 0; from < all.size(); from += CHUNK) {
                List<Long> chunk = all.subList(from, Math.min(all.size(), from + CHUNK));
                transaction.executeWithoutResult(status -> reckonAgain(chunk));
            }
        });
    }

    /** In the transaction of whatever made it necessary. */
    void reckonAgain(Collection<Long> stringIds) {
        reckon(access.asSystem(ACTOR, () -> assessments.judgements(stringIds)));
    }

    private void withdrawProof(List<WorkItem> proven, String words) {
        List<Step> steps = proven.stream()
                .filter(item -> !table.isOpenElsewhere(item))
                .map(item -> item.withoutProof(words))
                .toList();
        if (!steps.isEmpty()) {
            table.store(steps, ACTOR, true);
        }
    }

    /** The same judgements once more change nothing. */
    private void reckon(List<StringJudgement> judgements) {
        if (judgements.isEmpty()) {
            return;
        }
        Map<Long, StringJudgement> byString =
                judgements.stream().collect(Collectors.toMap(StringJudgement::stringId, Function.identity()));
        Surroundings around = access.asSystem(ACTOR, () -> surroundings(byString));
        follow(byString.keySet(), (stringId, items) -> {
            StringJudgement judgement = Objects.requireNonNull(byString.get(stringId));
            Seen seen = around.seen(judgement);
            return Reckoning.of(stringId, seen, around.wants(judgement, seen), items);
        });
    }

    /** What is asked of one string whose items those are. */
    private interface Reckoner {
        List<Step> steps(long stringId, List<WorkItem> items);
    }

    /** Reckons without a lock first: mostly nothing changes. */
    private void follow(Collection<Long> stringIds, Reckoner reckoner) {
        if (stringIds.isEmpty()) {
            return;
        }
        Map<Long, List<Step>> first = steps(stringIds, reckoner);
        if (!first.isEmpty()) {
            table.lock(first.keySet());
            Map<Long, List<Step>> locked = steps(first.keySet(), reckoner);
            table.store(locked.values().stream().flatMap(List::stream).toList(), ACTOR, true);
            demands.settle(locked);
        }
    }

    private Map<Long, List<Step>> steps(Collection<Long> stringIds, Reckoner reckoner) {
        Map<Long, List<WorkItem>> items = table.lively(stringIds);
        Map<Long, List<Step>> found = new java.util.TreeMap<>();
        for (long stringId : stringIds) {
            List<Step> steps = reckoner.steps(stringId, items.getOrDefault(stringId, List.of()));
            if (!steps.isEmpty()) {
                found.put(stringId, steps);
            }
        }
        return found;
    }

    private Surroundings surroundings(Map<Long, StringJudgement> judgements) {
        Map<Long, Place> around = places.of(judgements.keySet());
        Map<Long, Long> surveys = new HashMap<>();
        judgements.forEach((stringId, judgement) -> {
            Long survey = judgement.surveyId();
            if (survey != null) {
                surveys.put(stringId, survey);
            }
        });
        return new Surroundings(
                around,
                places.tests(judgements.keySet()),
                overruling.asked(
                        judgements.values(),
                        id -> Objects.requireNonNull(around.get(id)).today()),
                remarks.of(surveys, RemarkWork.codes()));
    }

    /** What else has a say, by string. */
    private record Surroundings(
            Map<Long, Place> places,
            Map<Long, List<Seen.Test>> tests,
            Map<Long, Asked> overruled,
            Map<Long, List<AcceptedRemarks.Made>> remarks) {

        Seen seen(StringJudgement judgement) {
            Place place = Objects.requireNonNull(places.get(judgement.stringId()));
            return Seen.of(
                    judgement,
                    place.today(),
                    place.outOfServiceSince(),
                    tests.getOrDefault(judgement.stringId(), List.of()));
        }

        Wants wants(StringJudgement judgement, Seen seen) {
            Wants wants = JudgementWork.of(judgement, overruled(judgement), seen.testedOn(), seen.today());
            LocalDate surveyedOn = judgement.asOf();
            remarks.getOrDefault(judgement.stringId(), List.of())
                    .forEach(made -> wants.add(RemarkWork.of(made.code(), made.place(), surveyedOn)));
            return wants;
        }

        private List<Overruled> overruled(StringJudgement judgement) {
            Asked asked = overruled.get(judgement.stringId());
            List<Overruled> found = new ArrayList<>();
            if (asked != null) {
                asked.inForce().forEach(one -> found.add(overruled(one)));
            }
            return found;
        }

        private static Overruled overruled(OverruleView one) {
            Integer unit = one.unit();
            Subject subject = unit == null
                    ? Subject.STRING
                    : one.subject() == OverruleView.Subject.JAR ? Subject.jar(unit) : Subject.link(unit);
            String words = "Overruled to " + one.urgency().word().toLowerCase(Locale.ROOT) + " by " + one.madeBy()
                    + " until " + one.lastDay() + ": " + one.reason();
            return new Overruled(subject, one.urgency(), words);
        }
    }
}
