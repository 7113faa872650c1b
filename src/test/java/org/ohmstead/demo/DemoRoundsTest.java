package org.ohmstead.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.programme.RoundPlan;
import org.ohmstead.programme.RoundTask;
import org.ohmstead.programme.RoundView;
import org.ohmstead.programme.Rounds;
import org.ohmstead.programme.SuggestedRound;
import org.ohmstead.support.ServiceTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.ActiveProfiles;

/** The demo estate as of 10 March 2026: 40 sites, 4 crews, three visits a day each. */
@ServiceTest
@ActiveProfiles({"test", "demo"})
class DemoRoundsTest {

    private static final LocalDate TODAY = LocalDate.parse("2026-03-10");
    private static final int VISITS_A_DAY = 3;

    @Autowired
    private Rounds rounds;

    @Autowired
    private Access access;

    private RoundPlan quarter(LocalDate first) {
        return access.asSystem(
                "demo test", () -> rounds.suggest(first, first.plusMonths(3).minusDays(1), VISITS_A_DAY, null));
    }

    @Test
    void aQuarterIsPlannedWithoutAMissAndWithFarFewerVisitsThanTheNaivePlan() {
        RoundPlan plan = quarter(TODAY);
        assertThat(plan.missed()).isZero();
        assertThat(plan.rounds())
                .isNotEmpty()
                .allSatisfy(round -> assertThat(round.on()).isBetween(round.earliest(), round.latest()));
        assertThat(plan.rounds().size()).isLessThan(plan.naiveVisits() * 2 / 3);
    }

    @Test
    void oneAreaIsPlannedAlready() {
        List<RoundView> planned = access.asSystem("demo test", () -> rounds.between(TODAY, TODAY.plusWeeks(9)));
        assertThat(planned)
                .filteredOn(RoundView::crew, "Crew Estuary")
                .isNotEmpty()
                .allSatisfy(round -> assertThat(round.tasks()).isNotEmpty());
    }

    @Test
    void whatIsPlannedIsNotSuggestedAgainAndCanBeMovedAndCancelled() {
        SuggestedRound first = quarter(TODAY).rounds().get(0);
        access.asSystem("demo test", () -> {
            long id = rounds.adopt(TODAY, TODAY.plusMonths(3).minusDays(1), VISITS_A_DAY, null, List.of(first.key()))
                    .get(0);
            RoundView round = rounds.round(id);
            assertThat(round.tasks()).hasSameSizeAs(first.tasks()).noneMatch(RoundTask::done);
            assertThat(quarter(TODAY).rounds()).extracting(SuggestedRound::key).doesNotContain(first.key());
            rounds.change(id, round.sequence(), first.on().plusDays(1), "Crew of the night", "gate code at the desk");
            assertThatThrownBy(() -> rounds.change(id, round.sequence(), first.on(), "x", ""))
                    .isInstanceOf(Conflict.class);
            assertThat(rounds.round(id).crew()).isEqualTo("Crew of the night");
            rounds.cancel(id, "storm");
            assertThat(quarter(TODAY).rounds()).extracting(SuggestedRound::key).contains(first.key());
        });
    }
}
