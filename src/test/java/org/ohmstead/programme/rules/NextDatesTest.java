package org.ohmstead.programme.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.programme.rules.NextDate.Governs;

class NextDatesTest {

    private static final LocalDate BEGAN = LocalDate.parse("2020-01-31");

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
        NextDate next = NextDates.next(BEGAN, surveyedOn, months, null);
        assertThat(next.dueOn()).isEqualTo(dueOn);
        assertThat(next.governs()).isEqualTo(Governs.INTERVAL);
        assertThat(next.reason()).contains("after its last survey on " + surveyedOn);
    }

    @Test
    void aStringNeverSurveyedIsDueAnIntervalAfterItCameIntoService() {
        NextDate next = NextDates.next(BEGAN, null, 1, null);
        assertThat(next.dueOn()).isEqualTo(LocalDate.parse("2020-02-29"));
        assertThat(next.reason()).contains("has not been surveyed");
    }

    @Test
    void anEarlierRecheckGoverns() {
        LocalDate recheck = LocalDate.parse("2024-06-30");
        NextDate next = NextDates.next(BEGAN, LocalDate.parse("2024-05-31"), 12, recheck);
        assertThat(next.dueOn()).isEqualTo(recheck);
        assertThat(next.governs()).isEqualTo(Governs.RECHECK);
        assertThat(next.intervalDueOn()).isEqualTo(LocalDate.parse("2025-05-31"));
    }

    @Test
    void aLaterRecheckDoesNotPutOffTheInterval() {
        NextDate next = NextDates.next(BEGAN, LocalDate.parse("2024-05-31"), 1, LocalDate.parse("2024-08-29"));
        assertThat(next.dueOn()).isEqualTo(LocalDate.parse("2024-06-30"));
        assertThat(next.governs()).isEqualTo(Governs.INTERVAL);
        assertThat(next.recheckBy()).isEqualTo(LocalDate.parse("2024-08-29"));
    }

    @Test
    void anIntervalOfNoMonthsIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> NextDates.next(BEGAN, null, 0, null));
    }
}
