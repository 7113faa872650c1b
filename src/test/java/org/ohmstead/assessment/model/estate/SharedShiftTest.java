package org.ohmstead.assessment.model.estate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Weighted means worked by hand from the errors that are told in docs/assessment.md, "Instruments". */
class SharedShiftTest {

    private static final LocalDate DAY = LocalDate.of(2024, 5, 1);
    private static final double EXPECTED = 1e-4;

    /** Error of a survey: what was expected, and .012. */
    private static final double SURVEY = EXPECTED + .012 * .012;

    private static final double OF_DAY = .015 * .015;

    private static SurveyError on(int day, double error) {
        return by("TS", day, error);
    }

    private static SurveyError by(String instrument, int day, double error) {
        return new SurveyError(day, day, DAY.plusDays(day), instrument, error, EXPECTED);
    }

    private static void is(SharedShift shift, double mean, double variance) {
        assertThat(shift.mean()).isCloseTo(mean, within(1e-12));
        assertThat(shift.variance()).isCloseTo(variance, within(1e-14));
    }

    @Test
    void oneSurveyTellsItsErrorAndNoBetterThanItsDayAllows() {
        is(SharedShift.of(List.of(on(0, .03))), .03, SURVEY + OF_DAY);
    }

    @Test
    void surveysOfOneDayShareTheErrorOfTheDay() {
        is(SharedShift.of(List.of(on(0, .02), on(0, .04))), .03, SURVEY / 2 + OF_DAY);
    }

    @Test
    void daysCountByThemselves() {
        is(SharedShift.of(List.of(on(0, .02), on(9, .04))), .03, (SURVEY + OF_DAY) / 2);
    }

    /** A day of two surveys is better known than one of one. */
    @Test
    void daysAreWeightedByHowWellTheyAreKnown() {
        double one = 1 / (SURVEY + OF_DAY);
        double two = 1 / (SURVEY / 2 + OF_DAY);
        is(
                SharedShift.of(List.of(on(0, .02), on(9, .03), on(9, .03))),
                (.02 * one + .03 * two) / (one + two),
                1 / (one + two));
    }

    /** Two days 16 % apart scatter more than expected: chi-square and four days' worth against 1 + 4. */
    @Test
    void daysThatScatterMoreThanExpectedAreLessCertain() {
        double variance = SURVEY + OF_DAY;
        double scatter = 2 * .05 * .05 / variance;
        SharedShift shift = SharedShift.of(List.of(on(0, -.02), on(9, .08)));
        is(shift, .03, variance / 2 * (scatter + 4) / 5);
    }

    /** Beyond 2.5 standard deviations from the middle a survey weighs less the farther it lies. */
    @Test
    void aStringThatChangedItselfWeighsLess() {
        List<SurveyError> surveys = new ArrayList<>(List.of(on(0, .03), on(0, .03), on(0, .03), on(0, .03)));
        surveys.add(on(0, .63));
        double away = .6 / Math.sqrt(SURVEY + OF_DAY);
        double weight = 2.5 / away;
        is(SharedShift.of(surveys), (4 * .03 + weight * .63) / (4 + weight), SURVEY / (4 + weight) + OF_DAY);
    }

    /** Of an even number the middle lies half way between the middle two: both ends are 4 sd from it, and balance. */
    @Test
    void theMiddleOfAnEvenNumberLiesHalfWay() {
        double far = 4 * Math.sqrt(SURVEY + OF_DAY);
        is(
                SharedShift.of(List.of(on(0, .01), on(0, .03), on(0, .02 + far), on(0, .02 - far))),
                .02,
                SURVEY / (2 + 2 * 2.5 / 4) + OF_DAY);
    }

    @Test
    void aSquareIsInSharesOfWhatIsExpected() {
        assertThat(SharedShift.square(on(0, -.03))).isCloseTo(.03 * .03 / (SURVEY + OF_DAY), within(1e-12));
    }

    /** All strings of an estate may be expected wrongly alike by 1 %. */
    @Test
    void withoutOtherSurveysTheReferenceIsZeroWithinOnePercent() {
        is(SharedShift.ofReference(List.of(), List.of(), 1), 0, 1e-4);
    }

    @Test
    void whatTheStringsShowedBeforeMovesTheReference() {
        double before = 1 / (2 * (SURVEY + OF_DAY) + .004 * .004);
        is(
                SharedShift.ofReference(List.of(on(0, .02)), List.of(), 2),
                .02 * before / (1e4 + before),
                1 / (1e4 + before));
    }

    /** Each other instrument may be off by 2 % itself, and counts once however often it was used. */
    @Test
    void whatOtherInstrumentsShowMovesTheReferenceEachOnce() {
        double north = 1 / (2 * (SURVEY / 2 + OF_DAY) + .02 * .02);
        double south = 1 / (2 * (SURVEY + OF_DAY) + .02 * .02);
        is(
                SharedShift.ofReference(List.of(), List.of(by("N", 0, .02), by("S", 0, -.01), by("N", 0, .02)), 2),
                (.02 * north - .01 * south) / (1e4 + north + south),
                1 / (1e4 + north + south));
    }

    @Test
    void shiftsAddUpWithTheirVariances() {
        SharedShift one = new SharedShift(.03, 4e-4);
        SharedShift other = new SharedShift(.01, 1e-4);
        is(one.scaled(3), .03, 12e-4);
        is(one.beyond(other), .02, 5e-4);
        is(one.plus(other), .04, 5e-4);
        is(one.togetherWith(other), .03 * .2 + .01 * .8, .8e-4);
    }
}
