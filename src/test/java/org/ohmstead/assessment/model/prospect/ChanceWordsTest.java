package org.ohmstead.assessment.model.prospect;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChanceWordsTest {

    private static final LocalDate TODAY = LocalDate.parse("2026-11-20");

    @ParameterizedTest
    @CsvSource({
        "0.004, less than 1 in 100",
        "0.01, 1 in 100",
        "0.10, 1 in 10",
        "0.19, 1 in 5",
        "0.34, 1 in 3",
        "0.50, 1 in 2",
        "0.549, 1 in 2",
        "0.55, 6 in 10",
        "0.56, 6 in 10",
        "0.949, 9 in 10",
        "0.95, more than 19 in 20",
        "0.97, more than 19 in 20",
        "1, more than 19 in 20"
    })
    void aChanceIsSaidAsPeopleSayIt(double chance, String words) {
        assertThat(ChanceWords.of(chance)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({
        "0.9, likely",
        "0.5, likely",
        "0.499, quite possible",
        "0.2, quite possible",
        "0.199, unlikely",
        "0.05, unlikely",
        "0.049, very unlikely"
    })
    void aLinksChanceIsSaidInCoarseSteps(double chance, String words) {
        assertThat(ChanceWords.coarse(chance)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "2027-03-04, 2027-11-30, between March and November 2027",
                "2027-03-04, 2029-05-30, between March 2027 and May 2029",
                "2027-03-04, 2027-03-30, in March 2027",
                "2026-11-20, 2028-01-02, between now and January 2028",
                "2027-03-04, none, not before March 2027",
                "2026-11-20, none, perhaps already",
                "2026-11-20, 2026-11-20, already",
                "none, none, not within fifteen years"
            })
    void aRangeOfDatesIsSaidInMonths(LocalDate early, LocalDate late, String words) {
        assertThat(ChanceWords.range(TODAY, early, late)).isEqualTo(words);
    }

    @Test
    void noWordsAreFinerThanOneInAHundred() {
        assertThat(ChanceWords.of(0.000001)).isEqualTo(ChanceWords.of(0.0099));
    }
}
