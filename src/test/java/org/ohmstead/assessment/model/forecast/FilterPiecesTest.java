package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/** The filter's pieces against closed forms and published values. */
class FilterPiecesTest {

    /** Standard normal distribution function, Abramowitz and Stegun, table 26.1. */
    @Test
    void theNormalLawIsThatOfTheTables() {
        double[][] table = {
            {0, .5},
            {.5, .6914624613},
            {1, .8413447461},
            {1.96, .9750021049},
            {3, .9986501020},
            {-1, .1586552539},
            {-3, .0013498980},
            {-2.326347874, .01}
        };
        for (double[] row : table) {
            assertThat(Normal.cumulative(row[0])).isCloseTo(row[1], within(1e-10));
        }
        assertThat(Normal.density(0, 1)).isCloseTo(.3989422804, within(1e-10));
        assertThat(Normal.density(2, 4)).isCloseTo(.3989422804 * Math.exp(-.5) / 2, within(1e-10));
    }

    /** Hipparchus, whose error function is exact to the last digits; tails relative to themselves. */
    @Test
    void theNormalLawIsThatOfTheLibrary() {
        NormalDistribution library = new NormalDistribution();
        for (double x = -8.9; x < 8.9; x += .0173) {
            double expected = library.cumulativeProbability(x);
            assertThat(Normal.cumulative(x)).as("at %s", x).isCloseTo(expected, within(1e-13));
            assertThat(Normal.cumulative(x)).as("at %s", x).isCloseTo(expected, withinPercentage(1e-5));
        }
        assertThat(Normal.cumulative(9.5)).isOne();
        assertThat(Normal.cumulative(-9.5)).isZero();
    }

    /** One scalar update: prior N(1, 4), reading 3 with variance 1: gain 0.8, mean 2.6, variance 0.8. */
    @Test
    void aReadingMovesTheStateByTheGain() {
        Gaussian state = new Gaussian(4);
        state.set(0, 1, 3);
        state.set(3, 0, 1);
        state.observeSum(0, 3, 3, 1);
        assertThat(state.sum(0, 3)).isCloseTo(2.6, within(1e-12));
        assertThat(state.sumVariance(0, 3)).isCloseTo(.8, within(1e-12));
        assertThat(state.mean[0]).isCloseTo(1 + 2 * 3 / 5.0, within(1e-12));
        assertThat(state.cov(0, 3)).isCloseTo(-3 / 5.0, within(1e-12));
    }

    /** White noise on the rate: q·t³/3, q·t²/2, q·t (any text on the integrated random walk). */
    @Test
    void timePassesAsForAnIntegratedRandomWalk() {
        Gaussian state = new Gaussian(2);
        state.set(0, 1, .04);
        state.set(1, .5, .09);
        state.addMultiple(0, 2, 1);
        state.addIntegratedNoise(.3, 2);
        assertThat(state.mean).containsExactly(2, .5);
        assertThat(state.cov(0, 0)).isCloseTo(.04 + 4 * .09 + .3 * 8 / 3, within(1e-12));
        assertThat(state.cov(0, 1)).isCloseTo(2 * .09 + .3 * 4 / 2, within(1e-12));
        assertThat(state.cov(1, 0)).isEqualTo(state.cov(0, 1));
        assertThat(state.cov(1, 1)).isCloseTo(.09 + .3 * 2, within(1e-12));
    }

    /** The common rise is a parabola: 1 + 0.5 · 2 + 0.25 · 2²/2. */
    @Test
    void theCommonRiseBends() {
        Gaussian state = new Gaussian(4);
        state.set(CommonState.RISE, 1, 0);
        state.set(CommonState.RATE, .5, 0);
        state.set(CommonState.ACCELERATION, .25, .01);
        CommonState.flow(state, 2, 0);
        assertThat(state.mean[CommonState.RISE]).isCloseTo(2.5, within(1e-12));
        assertThat(state.mean[CommonState.RATE]).isCloseTo(1, within(1e-12));
        assertThat(state.cov(CommonState.RISE, CommonState.RISE)).isCloseTo(.01 * 4, within(1e-12));
        assertThat(state.cov(CommonState.RATE, CommonState.RATE)).isCloseTo(.01 * 4, within(1e-12));
    }

    /** Readings 1, 2, 3 alike and one of 100: the centre stays near 2; its variance is 1.1 · MAD² / n at least. */
    @Test
    void theCentreOfASurveyIsNotMovedByAWildReading() {
        double[] alike = new double[4];
        Arrays.fill(alike, 1);
        Centre centre = Centre.of(new double[] {1, 2, 3, 100}, alike);
        assertThat(centre.value()).isBetween(2.0, 3.2);
        double scale = 1.4826 * 1;
        assertThat(centre.variance()).isCloseTo(Math.max(1.1 * scale * scale / 4, 1 / 4.0), within(1e-12));
        assertThat(centre.readings()).isEqualTo(4);
        assertThat(Centre.of(new double[] {Double.NaN}, new double[] {1}).readings())
                .isZero();
    }

    /** A healthy unit turns at λ a year: after 3 years 1 − exp(−3 λ) is going, its rate the mean jump. */
    @Test
    void healthyUnitsTurnAtTheirRate() {
        UnitConstants jars = UnitConstants.jars();
        UnitState unit = new UnitState(jars);
        unit.restart(0);
        unit.predict(3);
        assertThat(unit.goingWeight).isCloseTo(-Math.expm1(-3 * jars.turnRate()), within(1e-12));
        assertThat(unit.healthy.rate).isZero();
        double grown = jars.turnedRate() + 3 * jars.goingAcceleration();
        assertThat(unit.going.rate).isCloseTo(grown, within(1e-12));
    }

    /** Bayes: two regimes of equal weight, the reading 1 sd from one mean and 3 from the other: odds exp(4). */
    @Test
    void theRegimesWeighByTheirLikelihoods() {
        UnitState unit = new UnitState(UnitConstants.jars());
        unit.restart(0);
        unit.healthy.setLevel(0, .5);
        unit.going.setLevel(0, .5);
        unit.going.rise = 4;
        unit.goingWeight = .5;
        unit.observe(1, .5);
        assertThat(unit.goingWeight).isCloseTo(1 / (1 + Math.exp(4)), within(1e-12));
        assertThat(unit.readings).isEqualTo(1);
    }

    /** A reading that is surely wrong moves nothing. */
    @Test
    void aPlainlyWrongReadingMovesNeitherRegime() {
        UnitState unit = new UnitState(UnitConstants.jars());
        unit.restart(0);
        unit.predict(2);
        double weight = unit.goingWeight;
        unit.observe(.8, 1e-4, .01, .0625);
        assertThat(unit.goingWeight).isCloseTo(weight, within(1e-3));
        assertThat(unit.healthy.expected()).isCloseTo(0, within(1e-6));
    }

    /** The curve's straight pieces between 0.5 and 0.75 years: 0.3 lies halfway from 0.2 to 0.4. */
    @Test
    void theDayOfAChanceLiesOnTheCurve() {
        double[] curve = new double[CommonPath.HORIZONS.length];
        Arrays.fill(curve, .4);
        Arrays.fill(curve, 0, 4, .2);
        assertThat(CrossingCurve.reaches(curve, .3)).isCloseTo(.625, within(1e-12));
        assertThat(CrossingCurve.reaches(curve, .1)).isZero();
        assertThat(CrossingCurve.reaches(curve, .5)).isInfinite();
    }

    /** F(0) = 0.2, F(1) = 0.6, no short: given that it serves, half of what is left goes: 1 − 0.4/0.8 · exp(−0.001). */
    @Test
    void theChanceIsThatOfAUnitThatHasNotFailedYet() {
        double[] beyond = new double[CommonPath.HORIZONS.length];
        beyond[0] = .2;
        beyond[5] = .6;
        UnitState unit = new UnitState(UnitConstants.jars());
        UnitRisk risk = UnitRisk.of(beyond, 0, unit, ForecastParameters.standard());
        assertThat(risk.probability()).isCloseTo(1 - .5 * Math.exp(-.001), within(1e-12));
        assertThat(risk.score()).isCloseTo(.6, within(1e-12));
        assertThat(UnitRisk.of(beyond, 1, unit, ForecastParameters.standard()).score())
                .isCloseTo(1 - .4 * .15, within(1e-12));
    }
}
