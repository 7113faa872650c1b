package org.ohmstead.assessment.model.estate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmstead.assessment.model.estate.CapacityLimit.Belief;
import org.ohmstead.assessment.model.estate.ReferenceLevel.Settled;
import org.ohmstead.kernel.OhmicKind;

class LessonsTest {

    private static final Belief STANDARD = new Belief(Math.log(1.33), .12, .085, .4);

    /**
     * Bliss (1935), beetles killed by log dose, as in Dobson, An Introduction to Generalized Linear Models: the probit fit is
     * −34.935 + 19.728 x, so half die at 1.7709 and the width is 1/19.728 = 0.0507. Read here as rises and failures, with
     * next to nothing believed before.
     */
    @Test
    void aPublishedDoseResponseIsFitted() {
        double[] dose = {1.6907, 1.7242, 1.7552, 1.7842, 1.8113, 1.8369, 1.8610, 1.8839};
        int[] beetles = {59, 60, 62, 56, 63, 59, 62, 60};
        int[] killed = {6, 13, 18, 28, 52, 53, 61, 60};
        List<TestedJar> tests = new ArrayList<>();
        for (int i = 0; i < dose.length; i++) {
            for (int n = 0; n < beetles[i]; n++) {
                tests.add(new TestedJar(dose[i], n < killed[i]));
            }
        }
        CapacityLimit limit = CapacityLimit.learn(tests, new Belief(1.77, .03, .05, .3));
        assertThat(limit.logLimit()).isEqualTo(1.7709, within(.001));
        assertThat(limit.spread()).isEqualTo(.0507, within(.004));
        // standard error of the median by the delta method is about 0.0038
        assertThat((limit.high() - limit.low()) / 2).isEqualTo(1.96 * .0038, within(.0015));
        assertThat(limit.tested()).isEqualTo(481);
        assertThat(limit.failed()).isEqualTo(291);
    }

    private static List<TestedJar> tests(int count, double trueLimit, double differing, Random random) {
        List<TestedJar> tests = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double rise = .7 * random.nextDouble();
            tests.add(new TestedJar(rise, rise > trueLimit + differing * random.nextGaussian()));
        }
        return tests;
    }

    @Test
    void aKnownLimitLiesWithinItsInterval() {
        Random random = new Random(5);
        int holds = 0;
        for (int round = 0; round < 40; round++) {
            CapacityLimit limit = CapacityLimit.learn(tests(80, .45, .08, random), STANDARD);
            holds += limit.low() <= .45 && .45 <= limit.high() ? 1 : 0;
        }
        assertThat(holds).isGreaterThanOrEqualTo(35);
    }

    @Test
    void fewTestsMoveTheBeliefLessThanMany() {
        CapacityLimit few = CapacityLimit.learn(tests(14, .5, .08, new Random(2)), STANDARD);
        CapacityLimit many = CapacityLimit.learn(tests(400, .5, .08, new Random(2)), STANDARD);
        assertThat(Math.abs(many.logLimit() - .5)).isLessThan(.03);
        assertThat(few.high() - few.low()).isGreaterThan(2 * (many.high() - many.low()));
    }

    @Test
    void testsWithoutOverlapMakeNoAbsurdLimit() {
        List<TestedJar> apart = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            apart.add(new TestedJar(.05, false));
            apart.add(new TestedJar(.6, true));
        }
        CapacityLimit limit = CapacityLimit.learn(apart, STANDARD);
        assertThat(limit.logLimit()).isBetween(.2, .45);
        assertThat(limit.spread()).isBetween(.03, .2);
    }

    @Test
    void tooFewTestsTeachNothing() {
        assertThat(CapacityLimit.learn(List.of(), STANDARD)).isNull();
        List<TestedJar> tests = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            tests.add(new TestedJar(i < 4 ? .6 : .1, i < 4));
        }
        tests.add(new TestedJar(Double.NaN, true));
        assertThat(CapacityLimit.learn(tests, STANDARD)).isNull();
    }

    private static List<Settled> settled(int strings, int jars, double level, Random random) {
        List<Settled> settled = new ArrayList<>();
        for (int s = 0; s < strings; s++) {
            double ofString = level * Math.exp(.02 * random.nextGaussian());
            for (int j = 0; j < jars; j++) {
                settled.add(new Settled(s, OhmicKind.IMPEDANCE, ofString * Math.exp(.04 * random.nextGaussian())));
            }
        }
        return settled;
    }

    @Test
    void theLevelAndTheSpreadOfNewJarsAreFound() {
        Random random = new Random(9);
        int holds = 0;
        for (int round = 0; round < 40; round++) {
            ReferenceLevel level = ReferenceLevel.learn(settled(9, 24, .41, random));
            holds += level.low() <= .41 && .41 <= level.high() ? 1 : 0;
            assertThat(level.spread()).isEqualTo(.04, within(.012));
        }
        assertThat(holds).isGreaterThanOrEqualTo(34);
    }

    @Test
    void fewJarsAndMixedKindsTeachOnlyWhatTheyCan() {
        assertThat(ReferenceLevel.learn(List.of())).isNull();
        assertThat(ReferenceLevel.learn(settled(2, 60, .41, new Random(1)))).isNull();
        assertThat(ReferenceLevel.learn(settled(3, 6, .41, new Random(1)))).isNull();
        List<Settled> mixed = settled(4, 10, .41, new Random(1));
        mixed.add(new Settled(1, OhmicKind.CONDUCTANCE, 1500));
        mixed.add(new Settled(1, OhmicKind.IMPEDANCE, Double.NaN));
        assertThat(ReferenceLevel.learn(mixed).kind()).isEqualTo(OhmicKind.IMPEDANCE);
        assertThat(ReferenceLevel.learn(mixed).jars()).isEqualTo(40);
    }

    /** So far above and below every limit that they tell nothing of it. */
    private static List<TestedJar> tellingNothing(int failed, int passed) {
        List<TestedJar> tests = new ArrayList<>();
        for (int i = 0; i < failed; i++) {
            tests.add(new TestedJar(100, true));
        }
        for (int i = 0; i < passed; i++) {
            tests.add(new TestedJar(-100, false));
        }
        return tests;
    }

    /**
     * Tests that tell nothing leave the belief as it was: normal with its 95 % range, and a jar's own limit scattered by the
     * mean square of a lognormal width, .085² e^(2 · .4²), besides.
     */
    @Test
    void testsThatTellNothingLeaveTheBelief() {
        CapacityLimit limit = CapacityLimit.learn(tellingNothing(5, 7), STANDARD);
        assertThat(limit.logLimit()).isEqualTo(Math.log(1.33), within(1e-9));
        assertThat(limit.low()).isEqualTo(Math.log(1.33) - 1.96 * .12, within(1e-3));
        assertThat(limit.high()).isEqualTo(Math.log(1.33) + 1.96 * .12, within(1e-3));
        double differing = .085 * .085 * Math.exp(2 * .4 * .4);
        assertThat(limit.spread()).isEqualTo(Math.sqrt(differing + .12 * .12), within(2e-4));
        assertThat(limit.tested()).isEqualTo(12);
        assertThat(limit.failed()).isEqualTo(5);
    }

    /** Eight hundred at one rise of which half failed: there the limit is, though all together are most unlikely. */
    @Test
    void manyTestsDrownInNoRounding() {
        List<TestedJar> tests = new ArrayList<>();
        for (int i = 0; i < 800; i++) {
            tests.add(new TestedJar(.45, i % 2 == 0));
        }
        CapacityLimit limit = CapacityLimit.learn(tests, STANDARD);
        assertThat(limit.logLimit()).isEqualTo(.45, within(.005));
        assertThat(limit.low()).isBetween(.42, .45);
        assertThat(limit.high()).isBetween(.45, .48);
    }

    @Test
    void fiveOfEachAreNeeded() {
        assertThat(CapacityLimit.learn(tellingNothing(5, 5), STANDARD)).isNotNull();
        assertThat(CapacityLimit.learn(tellingNothing(4, 6), STANDARD)).isNull();
        assertThat(CapacityLimit.learn(tellingNothing(6, 4), STANDARD)).isNull();
    }

    private static List<Settled> strings(int jars, double... levels) {
        List<Settled> settled = new ArrayList<>();
        for (int s = 0; s < levels.length; s++) {
            for (int j = 0; j < jars; j++) {
                settled.add(new Settled(s, OhmicKind.IMPEDANCE, levels[s]));
            }
        }
        return settled;
    }

    /**
     * Three strings at .40, .41 and .43: the middle is .41; by hand its robust deviation is 1.4826 ln(.41/.40), a median's
     * standard error 1.2533/√3 of it, and Student's 97.5 % point of two degrees of freedom 4.3027.
     */
    @Test
    void theIntervalOfTheMiddleFollowsFromHowStringsDiffer() {
        ReferenceLevel level = ReferenceLevel.learn(strings(7, .40, .41, .43));
        double reach = 4.302653 * 1.2533 * 1.4826 * Math.log(.41 / .40) / Math.sqrt(3);
        assertThat(level.value()).isEqualTo(.41, within(1e-12));
        assertThat(Math.log(level.low())).isEqualTo(Math.log(.41) - reach, within(1e-6));
        assertThat(Math.log(level.high())).isEqualTo(Math.log(.41) + reach, within(1e-6));
        assertThat(level.spread()).isZero();
        assertThat(level.jars()).isEqualTo(21);
        assertThat(level.strings()).isEqualTo(3);
    }

    /** Strings that agree are known no better than their jars allow: here 4 strings of 6, half of the jars e^±.05 apart. */
    @Test
    void theIntervalIsNoNarrowerThanTheJarsOfAStringAllow() {
        List<Settled> settled = new ArrayList<>();
        for (int s = 0; s < 4; s++) {
            for (int j = -3; j <= 2; j++) {
                double away = j < 0 ? -.05 : .05;
                settled.add(new Settled(s, OhmicKind.IMPEDANCE, .41 * Math.exp(away)));
            }
        }
        ReferenceLevel level = ReferenceLevel.learn(settled);
        double spread = 1.4826 * .05;
        double reach = 3.182446 * 1.2533 * spread / Math.sqrt(6) / 2;
        assertThat(level.value()).isEqualTo(.41, within(1e-12));
        assertThat(level.spread()).isEqualTo(spread, within(1e-12));
        assertThat(Math.log(level.high()) - Math.log(.41)).isEqualTo(reach, within(1e-6));
        assertThat(Math.log(.41) - Math.log(level.low())).isEqualTo(reach, within(1e-6));
    }

    @Test
    void threeStringsAndTwentyJarsAreNeeded() {
        List<Settled> twenty = strings(7, .40, .41, .43).subList(0, 20);
        assertThat(ReferenceLevel.learn(twenty)).isNotNull();
        assertThat(ReferenceLevel.learn(twenty.subList(0, 19))).isNull();
        assertThat(ReferenceLevel.learn(strings(30, .40, .41))).isNull();
    }

    @Test
    void readingsThatCannotBeMeasuredAreLeftOut() {
        List<Settled> settled = strings(7, .40, .41, .43);
        settled.add(new Settled(1, OhmicKind.IMPEDANCE, 0));
        settled.add(new Settled(1, OhmicKind.IMPEDANCE, Double.POSITIVE_INFINITY));
        assertThat(ReferenceLevel.learn(settled).jars()).isEqualTo(21);
    }

    @Test
    void theKindOfWhichMostIsKnownIsTaken() {
        List<Settled> settled = strings(7, .40, .41, .43);
        for (int j = 0; j < 22; j++) {
            settled.add(new Settled(j % 3, OhmicKind.CONDUCTANCE, 1500));
        }
        assertThat(ReferenceLevel.learn(settled).kind()).isEqualTo(OhmicKind.CONDUCTANCE);
        assertThat(ReferenceLevel.learn(settled).value()).isEqualTo(1500, within(1e-9));
    }
}
