package org.ohmstead.programme.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.programme.rules.NextDate.Governs;

class NextDatesTest {

    private static final LocalDate BEGAN = LocalDate.parse("2020-01-31");

    private static NextDate next(
            @Nullable LocalDate surveyedOn, int months, @Nullable LocalDate recheckBy, Duty... duties) {
        return NextDates.next(new NextDates.Survey(BEGAN, surveyedOn, months, recheckBy, null), List.of(duties));
    }

    /** Four calendar months from 10 February 2024. */
    private static Duty grounds(String asOf, Waiver... waivers) {
        Branch branch = new Branch(
                "periodic",
                "look",
                Set.of(EvidenceKind.CHECK_GROUNDS),
                null,
                Interval.ofMonths(4, Counting.END_OF_MONTH),
                null);
        Requirement requirement = new Requirement(
                "grounds", "Inspect for unintentional grounds", "clause", Provenance.RECALLED, List.of(branch));
        DutyCase known = new DutyCase(LocalDate.parse("2024-02-10"), List.of(), List.of(), List.of(), List.of(waivers));
        return Duties.of(requirement, known, LocalDate.parse(asOf));
    }

    /** Counted by hand on the calendar. */
    @ParameterizedTest
    @CsvSource({
        "2024-01-31, 1, 2024-02-29",
        "2023-01-31, 1, 2023-02-28",
        "2024-08-31, 6, 2025-02-28",
        "2023-08-31, 6, 2024-02-29",
        "2024-02-29, 12, 2025-02-28",
        "2024-03-31, 1, 2024-04-30",
        "2024-04-30, 1, 2024-05-30",
        "2024-10-15, 3, 2025-01-15",
        "2024-03-10, 18, 2025-09-10"
    })
    void monthsAreCountedToTheDayAndEndWithAShortMonth(LocalDate surveyedOn, int months, LocalDate dueOn) {
        NextDate next = next(surveyedOn, months, null);
        assertThat(next.dueOn()).isEqualTo(dueOn);
        assertThat(next.governs()).isEqualTo(Governs.INTERVAL);
        assertThat(next.reason()).contains("after its last survey on " + surveyedOn);
    }

    @Test
    void aStringNeverSurveyedIsDueAnIntervalAfterItCameIntoService() {
        NextDate next = next(null, 1, null);
        assertThat(next.dueOn()).isEqualTo(LocalDate.parse("2020-02-29"));
        assertThat(next.reason()).contains("has not been surveyed");
    }

    @Test
    void anEarlierRecheckGoverns() {
        LocalDate recheck = LocalDate.parse("2024-06-30");
        NextDate next = next(LocalDate.parse("2024-05-31"), 12, recheck);
        assertThat(next.dueOn()).isEqualTo(recheck);
        assertThat(next.governs()).isEqualTo(Governs.RECHECK);
        assertThat(next.intervalDueOn()).isEqualTo(LocalDate.parse("2025-05-31"));
    }

    @Test
    void aLaterRecheckDoesNotPutOffTheInterval() {
        NextDate next = next(LocalDate.parse("2024-05-31"), 1, LocalDate.parse("2024-08-29"));
        assertThat(next.dueOn()).isEqualTo(LocalDate.parse("2024-06-30"));
        assertThat(next.governs()).isEqualTo(Governs.INTERVAL);
        assertThat(next.recheckBy()).isEqualTo(LocalDate.parse("2024-08-29"));
    }

    @Test
    void anEarlierDutyGovernsAndSaysWhichItIs() {
        NextDate next = next(LocalDate.parse("2024-02-10"), 12, LocalDate.parse("2024-07-01"), grounds("2024-06-01"));
        assertThat(next.dueOn()).isEqualTo(LocalDate.parse("2024-06-30"));
        assertThat(next.governs()).isEqualTo(Governs.DUTY);
        assertThat(next.reason()).isEqualTo("Inspect for unintentional grounds: due by 2024-06-30, in 29 days.");
    }

    @Test
    void anEarlierRiskDateGoverns() {
        LocalDate risk = LocalDate.parse("2024-05-05");
        NextDate next = NextDates.next(
                new NextDates.Survey(BEGAN, LocalDate.parse("2024-02-10"), 12, LocalDate.parse("2024-07-01"), risk),
                List.of(grounds("2024-03-01")));
        assertThat(next.dueOn()).isEqualTo(risk);
        assertThat(next.governs()).isEqualTo(Governs.RISK);
        assertThat(next.dutyDueOn()).isEqualTo(LocalDate.parse("2024-06-30"));
    }

    @Test
    void aWaivedDutyDoesNotGovernButIsNamed() {
        Waiver waiver = new Waiver(LocalDate.parse("2024-06-10"), LocalDate.parse("2024-09-30"), "slide");
        NextDate next = next(LocalDate.parse("2024-02-10"), 12, null, grounds("2024-08-01", waiver));
        assertThat(next.governs()).isEqualTo(Governs.INTERVAL);
        assertThat(next.reason()).endsWith("Waived for now: Inspect for unintentional grounds, due by 2024-06-30.");
    }

    @Test
    void anIntervalOfNoMonthsIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> next(null, 0, null));
    }
}
