package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VoltWatchTest {

    private static final double NAN = Double.NaN;
    private static final int JARS = 9;

    /** All at 2.25 V a cell, a few millivolts apart, but jar 3, which is so much lower. */
    private static double[] volts(double fall) {
        double[] volts = new double[JARS];
        Arrays.setAll(volts, i -> 2.25 + .003 * (i % 3 - 1));
        volts[3] = 2.25 - fall;
        return volts;
    }

    /** Half-yearly surveys, the first eight of them sound. */
    private static VoltWatch after(int surveys, double fall) {
        VoltWatch watch = new VoltWatch(JARS);
        for (int s = 0; s < 8 + surveys; s++) {
            watch.take(volts(s < 8 ? 0 : fall), s / 2.0, s == 0 ? 0 : .5);
        }
        return watch;
    }

    @Test
    void aSoundJarIsNeitherLowNorShorted() {
        VoltWatch watch = after(3, 0);
        assertThat(watch.low()).containsOnly(false);
        assertThat(watch.shortProbability[3]).isLessThan(.01);
        assertThat(watch.suspectedSince).containsOnly(NAN);
    }

    @Test
    void aJarFarBelowItsOwnLevelIsLowAndSuspectedFromThatDayOn() {
        VoltWatch watch = after(1, .1);
        assertThat(watch.low()[3]).isTrue();
        assertThat(watch.shortProbability[3]).isGreaterThan(.9);
        assertThat(watch.suspectedSince[3]).isEqualTo(4);
        assertThat(after(3, .1).suspectedSince[3]).isEqualTo(4);
        assertThat(watch.low()[4]).isFalse();
        assertThat(watch.suspectedSince[4]).isNaN();
    }

    @Test
    void aJarThatComesBackIsSuspectedNoMore() {
        VoltWatch watch = after(1, .1);
        watch.take(volts(0), 4.5, .5);
        watch.take(volts(0), 5, .5);
        assertThat(watch.shortProbability[3]).isLessThan(.1);
        assertThat(watch.suspectedSince[3]).isNaN();
        assertThat(watch.low()[3]).isFalse();
    }

    @Test
    void aSurveyWithoutVoltsSaysThatNoneIsLowAndLeavesWhatWasBelieved() {
        VoltWatch watch = after(1, .1);
        double believed = watch.shortProbability[3];
        double[] none = new double[JARS];
        Arrays.fill(none, NAN);
        watch.take(none, 4.5, .5);
        assertThat(watch.low()).containsOnly(false);
        assertThat(watch.shortProbability[3]).isEqualTo(believed);
    }

    @Test
    void aJarWithoutVoltsIsLeftAsItWasWhileTheOthersAreJudged() {
        VoltWatch watch = after(1, .1);
        double believed = watch.shortProbability[3];
        double[] volts = volts(.1);
        volts[3] = NAN;
        watch.take(volts, 4.5, .5);
        assertThat(watch.shortProbability[3]).isEqualTo(believed);
        assertThat(watch.low()[3]).isFalse();
    }

    /** The middle square of those read over .4549, at most nine, moves the variance by a fifth of its excess. */
    @ParameterizedTest
    @CsvSource({"9, 2.6", "4, 2.6", "3, 1"})
    void theScatterIsLearnedFromFourJarsOn(int jars, double grows) {
        VoltWatch watch = new VoltWatch(jars);
        double[] volts = new double[jars];
        Arrays.setAll(volts, i -> 2.25 + .2 * (i - (jars - 1) / 2.0));
        double before = watch.variance;
        watch.take(volts, 0, 0);
        assertThat(watch.variance / before).isCloseTo(grows, within(1e-9));
    }

    /** Volts that stay only slightly low for more than half a year are another level, not a short. */
    @Test
    void aJarThatStaysSlightlyLowIsReleasedAfterHalfAYearAndOneFarDownIsNot() {
        VoltWatch suspected = after(4, .01);
        assertThat(suspected.shortProbability[3]).isGreaterThan(.9);
        assertThat(suspected.suspectedSince[3]).isEqualTo(5);
        VoltWatch released = after(5, .01);
        assertThat(released.shortProbability[3]).isZero();
        assertThat(released.suspectedSince[3]).isNaN();
        assertThat(released.offset[3]).as("its level from now on").isCloseTo(-.01, within(.001));
        assertThat(after(8, .01).shortProbability[3]).isLessThan(.01);
        assertThat(after(8, .1).shortProbability[3]).isGreaterThan(.99);
        assertThat(after(8, .1).suspectedSince[3]).isEqualTo(4);
    }

    @Test
    void aReplacedJarStartsAnew() {
        VoltWatch watch = after(1, .1);
        watch.restart(3);
        assertThat(watch.shortProbability[3]).isZero();
        assertThat(watch.readings[3]).isZero();
        assertThat(watch.offset[3]).isZero();
        assertThat(watch.suspectedSince[3]).isNaN();
    }

    @Test
    void itIsReadBackAsWrittenAndCopiesAreTheirOwn() {
        VoltWatch watch = after(1, .1);
        DoubleTape tape = new DoubleTape();
        watch.write(tape);
        VoltWatch read = VoltWatch.read(tape, JARS);
        VoltWatch copy = watch.copy();
        watch.take(volts(0), 4.5, .5);
        VoltWatch told = after(1, .1);
        for (VoltWatch other : new VoltWatch[] {read, copy}) {
            assertThat(other.offset).containsExactly(told.offset);
            assertThat(other.readings).containsExactly(told.readings);
            assertThat(other.shortProbability).containsExactly(told.shortProbability);
            assertThat(other.suspectedSince).containsExactly(told.suspectedSince);
            assertThat(other.low()).containsExactly(told.low());
            assertThat(other.variance).isEqualTo(told.variance);
        }
    }

    /**
     * Bayes by hand on a first reading: own scatter .004 V, a first level worth .11 readings, shorts .004 a year. Sound is
     * Student's law with four degrees of freedom, .375 (1 + t²/4)^−2.5; shorted is as likely in each decade of the fall from
     * two deviations to .4 V, fading to a tenth and less below.
     */
    @ParameterizedTest
    @CsvSource({"0", ".01", ".03", ".06", ".2", ".6"})
    void aFirstReadingIsWeighedBetweenSoundAndShorted(double fall) {
        VoltWatch watch = new VoltWatch(JARS);
        double[] volts = new double[JARS];
        Arrays.fill(volts, 2.25);
        volts[3] = 2.25 - fall;
        watch.take(volts, 1, 1);
        double deviation = .004 * Math.sqrt(1 + 1 / .11);
        double t = fall / deviation;
        double sound = .375 * Math.pow(1 + t * t / 4, -2.5) / deviation;
        double at = Math.max(2 * deviation, Math.min(fall, .4));
        double shorted = 1 / (at * Math.log((.4 + 4 * deviation) / (2 * deviation)));
        if (fall < 2 * deviation) {
            shorted *= .1 * Math.exp(t - 2);
        }
        double prior = 1 - Math.exp(-.004);
        double expected = prior * shorted / (prior * shorted + (1 - prior) * sound);
        assertThat(watch.shortProbability[3]).isCloseTo(expected, within(1e-9));
        double weight = 1 - expected;
        assertThat(watch.offset[3]).isCloseTo(-weight * fall / (weight + .11), within(1e-9));
        assertThat(watch.readings[3]).isCloseTo(weight, within(1e-9));
        assertThat(watch.low()[3]).isEqualTo(fall > 3 * deviation);
    }
}
