package org.ohmstead.worklist.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.model.WorkItem.Asked;
import org.ohmstead.worklist.model.WorkItem.Done;
import org.ohmstead.worklist.model.WorkItem.Plan;

class WorkItemTest {

    private static final LocalDate ASKED = LocalDate.parse("2026-03-02");
    private static final Asked BY_SURVEY = new Asked(
            LocalDate.parse("2018-04-01"), Urgency.ACT, ASKED.plusDays(30), "Hot.", Source.JUDGEMENT, 7L, ASKED);
    private static final Done DONE = new Done(ASKED.plusDays(4), "A. Crew", "", false);

    private static WorkItem raised(WorkKind kind, Subject subject) {
        return WorkItem.raised(1, new WorkKey(kind, subject), ASKED.plusDays(1), BY_SURVEY)
                .after();
    }

    private static WorkItem in(WorkState state) {
        WorkItem raised = raised(WorkKind.REMAKE_LINK, Subject.link(3));
        return switch (state) {
            case RAISED -> raised;
            case PLANNED -> planned(raised);
            case DONE -> planned(raised).reportDone(DONE, null).after();
            case PROVEN ->
                planned(raised)
                        .reportDone(DONE, null)
                        .after()
                        .prove(Evidence.survey(8), "")
                        .after();
            case DISMISSED -> planned(raised).dismiss("Taken out.", null).after();
        };
    }

    private static WorkItem planned(WorkItem item) {
        return item.plan(new Plan("Crew North", ASKED.plusDays(3), null), "").after();
    }

    /** What each act makes of each state; what is not named is refused with what to do instead. */
    @ParameterizedTest
    @EnumSource
    void whatEachActMakesOf(WorkState state) {
        Map<WorkState, List<WorkState>> allowed = new EnumMap<>(WorkState.class);
        // plan, assign, done, dismiss, undo
        allowed.put(
                WorkState.RAISED,
                java.util.Arrays.asList(
                        WorkState.PLANNED, WorkState.RAISED, WorkState.DONE, WorkState.DISMISSED, null));
        allowed.put(
                WorkState.PLANNED,
                List.of(WorkState.PLANNED, WorkState.PLANNED, WorkState.DONE, WorkState.DISMISSED, WorkState.RAISED));
        allowed.put(WorkState.DONE, java.util.Arrays.asList(null, null, null, WorkState.DISMISSED, WorkState.PLANNED));
        allowed.put(WorkState.PROVEN, java.util.Arrays.asList(null, null, null, null, null));
        allowed.put(WorkState.DISMISSED, java.util.Arrays.asList(null, null, null, null, WorkState.PLANNED));
        List<UnaryOperator<WorkItem>> acts = List.of(
                item -> planned(item),
                item -> item.assign("Crew South").after(),
                item -> item.reportDone(DONE, null).after(),
                item -> item.dismiss("Not wanted.", null).after(),
                item -> item.undo("").after());
        List<WorkState> expected = allowed.get(state);
        for (int i = 0; i < acts.size(); i++) {
            UnaryOperator<WorkItem> act = acts.get(i);
            if (expected.get(i) == null) {
                assertThatThrownBy(() -> act.apply(in(state)))
                        .as("act " + i)
                        .isInstanceOf(Conflict.class)
                        .message()
                        .hasSizeGreaterThan(40);
            } else {
                assertThat(act.apply(in(state)).state()).as("act " + i).isEqualTo(expected.get(i));
            }
        }
    }

    @Test
    void whatARecordDoesIsNotReportedByHand() {
        for (WorkItem item : List.of(
                raised(WorkKind.MEASURE_AGAIN, Subject.jar(4)),
                raised(WorkKind.TEST_CAPACITY, Subject.STRING),
                raised(WorkKind.OVERDUE_DUTY, Subject.duty("grounds")))) {
            assertThatThrownBy(() -> item.reportDone(DONE, null)).isInstanceOf(Conflict.class);
        }
        assertThatThrownBy(() ->
                        raised(WorkKind.OVERDUE_DUTY, Subject.duty("grounds")).dismiss("no", null))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("waive");
    }

    @Test
    void workDoneBeforeTheReadingThatAskedDoesNotAnswerIt() {
        Done early = new Done(ASKED.minusDays(1), "A. Crew", "", false);
        assertThatThrownBy(() -> in(WorkState.RAISED).reportDone(early, null)).isInstanceOf(Conflict.class);
    }

    @Test
    void onlyWhatIsDoneIsProven() {
        assertThatThrownBy(() -> in(WorkState.PLANNED).prove(Evidence.survey(9), ""))
                .isInstanceOf(IllegalStateException.class);
    }

    @Test
    void aLostProofLeavesItDone() {
        assertThat(in(WorkState.PROVEN).withoutProof("voided").after().state()).isEqualTo(WorkState.DONE);
    }

    @Test
    void aDismissalOfTheServiceIsNotTakenBack() {
        WorkItem closed =
                in(WorkState.RAISED).dismissByService("No longer asked.", null).after();
        assertThatThrownBy(() -> closed.undo("")).isInstanceOf(Conflict.class).hasMessageContaining("raise it anew");
    }

    @Test
    void aKindOfWorkSuitsItsSubject() {
        assertThatThrownBy(() -> new WorkKey(WorkKind.REMAKE_LINK, Subject.jar(3)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Subject.link(0).words(12)).isEqualTo("positive terminal link");
        assertThat(Subject.link(12).words(12)).isEqualTo("negative terminal link");
    }
}
