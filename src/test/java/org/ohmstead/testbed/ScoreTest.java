package org.ohmstead.testbed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The scorer gives what the literature, or counting by hand, gives. */
class ScoreTest {
    private static final double NONE = Double.NaN;

    private static Truth unit() {
        return new Truth(false, 0, 0, 99, 99, 99, "", new FlatCourse());
    }

    private static final class FlatCourse extends Course {
        @Override
        double rise(double age) {
            return 0;
        }

        @Override
        double limit() {
            return 1;
        }
    }

    private static Verdict said(Truth unit, double yearsToFailure, double score) {
        return new Verdict(0, unit, yearsToFailure, 9, score, NONE, NONE, NONE, NONE);
    }

    private static Verdict failing(double score) {
        return said(unit(), .5, score);
    }

    private static Verdict healthy(double score) {
        return said(unit(), 9, score);
    }

    /**
     * The four scores that open the usual explanations of both areas: 0.1 and 0.4 healthy, 0.35 and 0.8 failing. Of four
     * pairs three are in order: 3/4. Precision when the first is found 1/1, when the second is 2/3: mean 5/6.
     */
    @Test
    void areasOfTheFourPointExample() {
        Score score = Score.of(List.of(healthy(.1), healthy(.4), failing(.35), failing(.8)));
        assertThat(score.auc()).isEqualTo(.75);
        assertThat(score.prAuc()).isCloseTo(5 / 6.0, within(1e-12));
    }

    /**
     * Hanley and McNeil, The meaning and use of the area under a ROC curve, Radiology 143 (1982), table I: 109 images
     * rated 1 to 5; 58 normal ones 33, 6, 6, 11, 2 and 51 abnormal ones 3, 2, 2, 11, 33 per rating; area 0.893 (counts
     * from memory, the area follows from them).
     */
    @Test
    void areaOfHanleyAndMcNeilWithItsManyTies() {
        int[] normal = {33, 6, 6, 11, 2};
        int[] abnormal = {3, 2, 2, 11, 33};
        List<Verdict> verdicts = new ArrayList<>();
        for (int rating = 0; rating < 5; rating++) {
            for (int k = 0; k < normal[rating]; k++) {
                verdicts.add(healthy(rating));
            }
            for (int k = 0; k < abnormal[rating]; k++) {
                verdicts.add(failing(rating));
            }
        }
        assertThat(Score.of(verdicts).auc()).isCloseTo(.893, within(.0005));
    }

    /** One threshold for all: precision is the share of failing ones, whichever way they are listed. */
    @Test
    void equalScoresGiveTheShareOfFailingOnes() {
        List<Verdict> goodFirst = List.of(failing(1), healthy(1), healthy(1), healthy(1));
        List<Verdict> badFirst = List.of(healthy(1), healthy(1), healthy(1), failing(1));
        assertThat(Score.of(goodFirst).prAuc()).isEqualTo(.25);
        assertThat(Score.of(badFirst).prAuc()).isEqualTo(.25);
        assertThat(Score.of(goodFirst).auc()).isEqualTo(.5);
        assertThat(Score.of(goodFirst).found1()).isZero();
    }

    /**
     * 200 healthy unit-surveys score 1..200, so 1 % allows two false flags (199, 200) and 5 % ten (191..200): found at 1 %
     * is what scores above 198, at 5 % above 190.
     */
    @Test
    void foundIsCountedPerFailureAndTheLeadFromItsFirstFlag() {
        List<Verdict> verdicts = new ArrayList<>(
                IntStream.rangeClosed(1, 200).mapToObj(k -> healthy(k)).toList());
        Truth twiceFlagged = unit();
        verdicts.add(said(twiceFlagged, .75, 198.5));
        verdicts.add(said(twiceFlagged, .25, 300));
        verdicts.add(failing(198));
        verdicts.add(failing(190));
        Score score = Score.of(verdicts);
        assertThat(score.failures()).isEqualTo(3);
        assertThat(score.found1()).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(score.found5()).isCloseTo(2 / 3.0, within(1e-12));
        assertThat(score.lead1()).isCloseTo(9, within(1e-12));
        assertThat(score.costPerString()).isEqualTo(2 * 100 + 2 * 5);
        assertThat(score.rows()).isEqualTo(204);
    }

    @Test
    void whatHasFailedAlreadyIsNobodysForecast() {
        List<Verdict> verdicts = List.of(failing(3), healthy(1), said(unit(), 0, 2), said(unit(), -1, 9));
        assertThat(Score.of(verdicts).rows()).isEqualTo(2);
        assertThat(Score.of(verdicts).auc()).isEqualTo(1);
    }

    @Test
    void aYearToTheDayStillCountsAsFailingWithinTwelveMonths() {
        assertThat(said(unit(), 1, 0).isFailing()).isTrue();
        assertThat(said(unit(), 1.001, 0).isFailing()).isFalse();
    }

    /**
     * Brier, Verification of forecasts expressed in terms of probability (1950), for two classes as mean squared error:
     * said 0.1, 0.9, 0.8, 0.3 of what turned out no, yes, yes, no: (0.01 + 0.01 + 0.04 + 0.09) / 4 = 0.0375.
     */
    @Test
    void brierIsTheMeanSquaredError() {
        List<Verdict> verdicts = List.of(
                healthy(0).with(.1, NONE, NONE, NONE),
                failing(0).with(.9, NONE, NONE, NONE),
                failing(0).with(.8, NONE, NONE, NONE),
                healthy(0).with(.3, NONE, NONE, NONE));
        assertThat(Score.of(verdicts).brier()).isCloseTo(.0375, within(1e-12));
    }

    /** Crossings 1, 2, 3, 3.9 and 5 years away, the interval 2 to 3.5 said of each: two of the four near ones hold. */
    @Test
    void coverageCountsCrossingsLessThanFourYearsAway() {
        List<Verdict> verdicts = new ArrayList<>();
        for (double away : new double[] {-1, 1, 2, 3, 3.9, 5}) {
            verdicts.add(new Verdict(0, unit(), 9, away, 0, NONE, 2, 3, 3.5));
        }
        verdicts.add(failing(1));
        assertThat(Score.of(verdicts).coverage()).isEqualTo(.5);
        assertThat(Score.of(verdicts).coverageSaid()).isEqualTo(2 / 5.0);
    }

    @Test
    void theMeanOverEstatesCountsEachEstateAlike() {
        Score one = Score.of(List.of(healthy(0), failing(1)));
        Score two = Score.of(List.of(healthy(1), failing(0), healthy(1), healthy(1)));
        assertThat(Score.mean(List.of(one, two)).auc()).isEqualTo(.5);
        assertThat(Score.mean(List.of(one, two)).rows()).isEqualTo(6);
    }
}
