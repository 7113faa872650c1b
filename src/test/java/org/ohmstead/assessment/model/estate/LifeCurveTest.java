package org.ohmstead.assessment.model.estate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.assessment.model.estate.Stay.End;

class LifeCurveTest {

    private static Stay stay(double years, End end) {
        return new Stay(years, end, 1);
    }

    /** The maintained group of the leukaemia study (Miller 1981; R's aml): survival 10/11 at 9, 9/11 at 13. */
    @Test
    void itIsTheProductLimitCurve() {
        List<Stay> stays = new ArrayList<>();
        for (double failed : new double[] {9, 13, 18, 23, 31, 34, 48}) {
            stays.add(stay(failed, End.FAILED));
        }
        for (double alive : new double[] {13, 28, 45, 161}) {
            stays.add(stay(alive, End.GOES_ON));
        }
        LifeCurve curve = LifeCurve.of("T", stays);
        assertThat(curve.steps().get(0).inService()).isEqualTo(10 / 11.0, within(1e-12));
        assertThat(curve.steps().get(1).inService()).isEqualTo(9 / 11.0, within(1e-12));
        assertThat(curve.steps().get(6).inService()).isEqualTo(0.18409, within(1e-5));
        assertThat(curve.steps().get(6).low()).isEqualTo(0.01174, within(1e-5));
        assertThat(curve.failures()).isEqualTo(7);
        assertThat(curve.longestYears()).isEqualTo(161);
    }

    @Test
    void fewFailuresFitNoLaw() {
        LifeCurve curve = LifeCurve.of(
                "T", List.of(new Stay(3, End.FAILED, 4), new Stay(8, End.GOES_ON, 50), new Stay(2, End.TAKEN_OUT, 30)));
        assertThat(curve.weibull()).isNull();
        assertThat(curve.jars()).isEqualTo(84);
        assertThat(curve.takenOut()).isEqualTo(30);
        assertThat(LifeCurve.lines(List.of(curve))).isEmpty();
    }

    /** All at one age, nobody beyond: the likelihood has no maximum. */
    @Test
    void failuresThatDetermineNoLawGiveNone() {
        assertThat(LifeCurve.of("T", List.of(new Stay(3, End.FAILED, 9))).weibull())
                .isNull();
        assertThat(LifeCurve.of("T", List.of()).jars()).isZero();
    }

    @Test
    void aKnownLawLiesWithinItsIntervals() {
        Random random = new Random(77);
        int holds = 0;
        for (int round = 0; round < 60; round++) {
            List<Stay> stays = new ArrayList<>();
            for (int i = 0; i < 200; i++) {
                double life = 14 * Math.pow(-Math.log(1 - random.nextDouble()), 1 / 3.0);
                double seen = 3 + 12 * random.nextDouble();
                stays.add(life < seen ? stay(life, End.FAILED) : stay(seen, End.GOES_ON));
            }
            WeibullLife fit = LifeCurve.of("T", stays).weibull();
            double tenth = 14 * Math.pow(-Math.log(.9), 1 / 3.0);
            holds += fit.tenth().low() <= tenth && tenth <= fit.tenth().high() ? 1 : 0;
            assertThat(fit.curve())
                    .allSatisfy(age -> assertThat(age.inService()).isBetween(age.low() - 1e-12, age.high() + 1e-12));
        }
        assertThat(holds).isGreaterThanOrEqualTo(53);
    }

    @ParameterizedTest
    @CsvSource({
        "High ohmic value, false, FAILED",
        "Failed in test, true, FAILED",
        "cell shorted, false, FAILED",
        "'', false, UNEXPLAINED",
        "'', true, TAKEN_OUT",
        "moved to site B, false, TAKEN_OUT",
        "lent to another crew after a failed delivery, false, TAKEN_OUT",
        "Whole string renewed after capacity test, true, TAKEN_OUT",
        "commissioning, false, TAKEN_OUT"
    })
    void theReasonIsReadFromTheRegistersWords(String words, boolean withMost, End end) {
        assertThat(LeavingReason.of(words, withMost)).isEqualTo(end);
    }
}
