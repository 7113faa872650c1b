package org.ohmstead.capacity.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.ohmstead.capacity.model.Practice.Tested;
import org.ohmstead.kernel.Technology;

/**
 * Intervals of the recommended practices: 25 % of expected life, at most 5 years vented and 2 years valve-regulated (IEEE
 * 450, 1188, from memory); yearly under 90 %, replace under 80 % (USBR FIST 3-6); yearly after 85 % of service life
 * (specification SR 3.8.4.8 as cited in a plant order); Ni-Cd 5 years (FIST 3-6).
 */
class PracticeTest {

    private static final LocalDate NEW = LocalDate.of(2010, 1, 1);
    private static final LocalDate ON = LocalDate.of(2020, 6, 15);

    private static Tested tested(LocalDate on, double percent) {
        return new Tested(on, percent, false);
    }

    private static NextTest after(Technology technology, Double life, Tested... tests) {
        return Practice.next(List.of(tests), technology, NEW, life);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/capacity/practice.csv", numLinesToSkip = 1)
    void theNextTestIsThatOfTheSources(
            Technology technology, double life, double percent, double years, boolean replace, String source) {
        NextTest next = Practice.next(List.of(tested(ON, percent)), technology, ON.minusYears(1), life);
        assertThat(next.on()).as(source).isCloseTo(ON.plusMonths(Math.round(12 * years)), within(1, ChronoUnit.DAYS));
        assertThat(next.replace()).as(source).isEqualTo(replace);
    }

    @Test
    void aSoundVentedStringWaitsAQuarterOfItsLifeAndFiveYearsAtMost() {
        NextTest next = after(Technology.VENTED_LEAD_ACID, 30.0, tested(ON, 102));
        assertThat(next.on()).isEqualTo(ON.plusYears(5));
        assertThat(next.yearly()).isFalse();
        NextTest shorter = after(Technology.VENTED_LEAD_ACID, 16.0, tested(LocalDate.of(2014, 1, 1), 102));
        assertThat(shorter.on()).isEqualTo(LocalDate.of(2018, 1, 1));
        assertThat(shorter.reason()).contains("a quarter of the expected life");
    }

    @Test
    void aValveRegulatedStringWaitsTwoYearsAtMostAndNickelCadmiumFive() {
        assertThat(after(Technology.AGM, 20.0, tested(ON, 101)).on()).isEqualTo(LocalDate.of(2022, 6, 16));
        assertThat(after(Technology.NICKEL_CADMIUM, 12.0, tested(LocalDate.of(2011, 1, 1), 101))
                        .on())
                .isEqualTo(LocalDate.of(2016, 1, 1));
    }

    @Test
    void underNinetyPercentItIsTestedYearly() {
        assertThat(after(Technology.VENTED_LEAD_ACID, 30.0, tested(ON, 90)).yearly())
                .isFalse();
        NextTest next = after(Technology.VENTED_LEAD_ACID, 30.0, tested(ON, 89.9));
        assertThat(next.on()).isEqualTo(ON.plusYears(1));
        assertThat(next.reason()).contains("89.9 %, under 90 %");
        assertThat(next.replace()).isFalse();
    }

    @Test
    void aDropOfTenPointsSinceTheLastTestMakesItYearly() {
        Tested before = tested(ON.minusYears(5), 104);
        assertThat(after(Technology.VENTED_LEAD_ACID, 30.0, before, tested(ON, 94))
                        .on())
                .isEqualTo(ON.plusYears(1));
        assertThat(after(Technology.VENTED_LEAD_ACID, 30.0, before, tested(ON, 94.1))
                        .yearly())
                .isFalse();
    }

    @Test
    void pastEightyFivePercentOfLifeItIsTestedYearlyAndNearItNoLaterThanThatDay() {
        // 85 % of 12 years from 1 January 2010 are used on 15 March 2020
        NextTest past = after(Technology.VENTED_LEAD_ACID, 12.0, tested(ON, 100));
        assertThat(past.yearly()).isTrue();
        NextTest near = after(Technology.VENTED_LEAD_ACID, 15.0, tested(ON, 100));
        assertThat(near.yearly()).isFalse();
        // 12.75 years of 365.25 days
        assertThat(near.on()).isEqualTo(LocalDate.of(2022, 10, 2));
        assertThat(near.reason()).contains("85 % of an expected life of 15 years");
    }

    @Test
    void underEightyPercentItIsToBeReplaced() {
        NextTest next = after(Technology.VENTED_LEAD_ACID, null, tested(ON, 79.9));
        assertThat(next.replace()).isTrue();
        assertThat(next.on()).isEqualTo(ON.plusYears(1));
        assertThat(next.reason()).contains("as soon as possible");
    }

    @Test
    void aTestStoppedEarlyProvesNoDegradation() {
        NextTest next =
                after(Technology.VENTED_LEAD_ACID, null, tested(ON.minusYears(5), 104), new Tested(ON, 79, true));
        assertThat(next.yearly()).isFalse();
        assertThat(next.replace()).isFalse();
    }
}
