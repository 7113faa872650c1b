package org.ohmstead.assessment.model.estate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
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

    private static final int[] FAILED_AT = {6700, 9120, 12200, 13150, 14300, 17520, 20100, 20900, 22700, 26510, 27490};
    private static final int[] RUNNING_AT = {
        6950, 7820, 8790, 9660, 9820, 11310, 11690, 11850, 11880, 12140, 12870, 13330, 13470, 14040, 17540, 17890,
        18450, 18960, 18980, 19410, 20100, 20150, 20320, 23490, 27410, 27890, 28100
    };

    /** Distances at which shock absorbers failed or were still running; a thousand is read as a year. */
    private static WeibullLife shockAbsorbers() {
        List<Stay> stays = new ArrayList<>();
        Arrays.stream(FAILED_AT).forEach(at -> stays.add(stay(at / 1000.0, End.FAILED)));
        Arrays.stream(RUNNING_AT).forEach(at -> stays.add(stay(at / 1000.0, End.GOES_ON)));
        return LifeCurve.of("T", stays).weibull();
    }

    private static void isNear(WeibullLife.Figure figure, double value, double low, double high) {
        assertThat(figure.value()).isCloseTo(value, within(1e-4 * value));
        assertThat(figure.low()).isCloseTo(low, within(1e-4 * low));
        assertThat(figure.high()).isCloseTo(high, within(1e-4 * high));
    }

    /**
     * Meeker and Escobar (1998), table C.2 (O'Connor 1985), with the estimates and standard errors of
     * {@code reference/values.csv}: mu 10.22986 ± 0.10989, sigma 0.31641 ± 0.07317, a tenth at 13,600. Intervals are Wald's on
     * the logarithm: 1.959964 standard errors.
     */
    @Test
    void aPublishedLifeTestIsFittedWithItsIntervals() {
        WeibullLife life = shockAbsorbers();
        double ofScale = Math.exp(1.959964 * 0.109890477953);
        isNear(life.scale(), 27.7187181, 27.7187181 / ofScale, 27.7187181 * ofScale);
        double ofShape = Math.exp(1.959964 * 0.0731654484779 / 0.316408603935);
        isNear(life.shape(), 3.16047031, 3.16047031 / ofShape, 3.16047031 * ofShape);
        assertThat(life.tenth().value()).isCloseTo(13.6000347, within(1e-3));
        assertThat(life.tenth().low()).isLessThan(13.6).isPositive();
        assertThat(life.half().value()).isCloseTo(27.7187181 * Math.pow(Math.log(2), 0.316408603935), within(1e-3));
        assertThat(life.line())
                .isEqualTo(new LifeLine(life.scale().value(), life.shape().value()));
    }

    /** From new to a quarter beyond the oldest, 28.1: Weibull's exp(−(t/27.719)^3.1605). */
    @Test
    void theCurveRunsFromNewToAQuarterBeyondTheOldest() {
        List<WeibullLife.Age> curve = shockAbsorbers().curve();
        assertThat(curve.get(0)).isEqualTo(new WeibullLife.Age(0, 1, 1, 1));
        assertThat(curve.get(curve.size() - 1).years()).isCloseTo(1.25 * 28.1, within(1e-9));
        for (int i = 1; i < curve.size(); i++) {
            WeibullLife.Age age = curve.get(i);
            assertThat(age.years()).isCloseTo(1.25 * 28.1 * i / (curve.size() - 1), within(1e-9));
            assertThat(age.inService())
                    .isCloseTo(Math.exp(-Math.pow(age.years() / 27.7187181, 3.16047031)), within(1e-5));
            assertThat(age.low()).isLessThan(age.inService()).isBetween(0.0, 1.0);
            assertThat(age.high()).isGreaterThan(age.inService()).isBetween(0.0, 1.0);
        }
    }

    @Test
    void fiveFailuresFitALawAndUnexplainedOnesCountAmongThem() {
        List<Stay> stays = new ArrayList<>(List.of(stay(4, End.FAILED), stay(6, End.FAILED), stay(7, End.FAILED)));
        stays.add(stay(9, End.UNEXPLAINED));
        stays.add(new Stay(10, End.GOES_ON, 20));
        assertThat(LifeCurve.of("T", stays).weibull()).isNull();
        stays.add(stay(8, End.UNEXPLAINED));
        LifeCurve curve = LifeCurve.of("T", stays);
        assertThat(curve.failures()).isEqualTo(5);
        assertThat(curve.unexplained()).isEqualTo(2);
        assertThat(LifeCurve.lines(List.of(curve, LifeCurve.of("NEW", List.of()))))
                .containsOnlyKeys("T")
                .containsEntry("T", curve.weibull().line());
    }
}
