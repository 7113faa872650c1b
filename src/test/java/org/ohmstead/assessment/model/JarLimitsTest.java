package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.assessment.model.Baseline.Origin;
import org.ohmstead.kernel.DateRange;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;
import org.ohmstead.kernel.Urgency;

/** The rows of docs/assessment.md, "the rules find", that speak of jars: at each limit and just short of it. */
class JarLimitsTest {

    private static final double NAN = Double.NaN;
    private static final LocalDate DAY = LocalDate.parse("2021-07-10");
    private static final VoltsEvidence NO_VOLTS = new VoltsEvidence(NAN, NAN, NAN, NAN, NAN, NAN);
    private static final Limits LIMITS = Limits.standard();

    /** A jar of 0.400 mΩ when new; what is asked about is set, the rest is missing. */
    private static final class Jar {

        private Origin origin = Origin.SURVEY;
        private double rise = NAN;
        private double riseBefore = NAN;
        private double lotRise = NAN;
        private double lotRiseBefore = NAN;
        private double z = NAN;
        private double step = NAN;
        private boolean onFloat = true;
        private VoltsEvidence volts = NO_VOLTS;
        private Technology technology = Technology.AGM;
        private double floatVolts = 2.25;
        private double celsius = NAN;

        Jar risen(double now, double before) {
            rise = now;
            riseBefore = before;
            return this;
        }

        Jar overLot(double now, double before, double deviations) {
            lotRise = now;
            lotRiseBefore = before;
            z = deviations;
            return this;
        }

        Jar against(Origin other) {
            origin = other;
            return this;
        }

        Jar stepped(double logarithmic) {
            step = logarithmic;
            return this;
        }

        Jar offFloat() {
            onFloat = false;
            return this;
        }

        Jar offMedian(double now, double before) {
            volts = new VoltsEvidence(2.25 * (1 + now), 2.25 * (1 + now), 2.25, now, 2.25 * (1 + before), before);
            return this;
        }

        Jar vented(double setpoint, double perCell, double perCellBefore, double median) {
            technology = Technology.VENTED_LEAD_ACID;
            floatVolts = setpoint;
            volts = new VoltsEvidence(perCell, perCell, median, perCell / median - 1, perCellBefore, NAN);
            return this;
        }

        Jar warmer(double kelvin) {
            celsius = 25 + kelvin;
            return this;
        }

        JarCase done() {
            double value = 0.4 * (1 + (Double.isNaN(rise) ? 0 : rise));
            Reading last = new Reading(2, DAY, OhmicKind.IMPEDANCE, value, value);
            Reading before = new Reading(1, DAY.minusYears(1), OhmicKind.IMPEDANCE, 0.4, 0.4);
            JarBaseline baseline = Double.isNaN(rise)
                    ? null
                    : new JarBaseline(
                            new Baseline(0.4, origin, origin == Origin.SURVEY ? DAY.minusYears(3) : null), 0.4, 0);
            return new JarCase(
                    new JarSpell(7, null, DateRange.startingOn(DAY.minusYears(4)), NAN),
                    new JarTypeFacts(
                            "INVENTED-100", technology, 1, 2, 100, floatVolts, NAN, OhmicKind.IMPEDANCE, NAN, NAN, 25),
                    JarCase.Presence.READ,
                    new OhmicEvidence(last, before, baseline, rise, riseBefore, lotRise, lotRiseBefore, z, step, null),
                    volts,
                    celsius,
                    25,
                    onFloat);
        }
    }

    private static @Nullable Urgency asks(@Nullable Reason reason) {
        return reason == null ? null : reason.asks();
    }

    private static @Nullable Reason overBaseline(Jar jar) {
        return JarOhmicRules.overBaseline(jar.done(), LIMITS);
    }

    /** Note from 20 %, plan from 25 %, act from 50 %; borne out from half the limit on. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "0.199, 0.199, none, 0",
                "0.20, 0.20, CLEAR, 0",
                "0.249, 0.249, CLEAR, 0",
                "0.25, 0.125, PLAN, 0",
                "0.25, 0.124, RECHECK, 90",
                "0.25, NaN, RECHECK, 90",
                "0.499, 0.25, PLAN, 0",
                "0.499, 0.124, RECHECK, 90",
                "0.50, 0.25, ACT, 30",
                "0.50, 0.249, RECHECK, 30",
                "0.50, NaN, RECHECK, 30"
            })
    void aRiseOverTheBaselineAsksByItsSize(double rise, double before, @Nullable Urgency asks, int days) {
        Reason reason = overBaseline(new Jar().risen(rise, before));
        assertThat(asks(reason)).isEqualTo(asks);
        assertThat(reason == null ? 0 : reason.recheckDays()).isEqualTo(days);
    }

    @Test
    void aRiseOffFloatIsReadAgainAtMost() {
        assertThat(asks(overBaseline(new Jar().risen(0.6, 0.6).offFloat()))).isEqualTo(Urgency.RECHECK);
        assertThat(asks(overBaseline(new Jar().risen(0.2, 0.2).offFloat()))).isEqualTo(Urgency.CLEAR);
    }

    /** Alone it never asks for Act, and asks nothing while the jar reads like its lot. */
    @ParameterizedTest
    @CsvSource({
        "0.50, 0.25, 0.199, CLEAR",
        "0.50, 0.25, 0.20, PLAN",
        "0.50, 0.25, NaN, PLAN",
        "0.50, 0.249, 0.20, RECHECK",
        "0.20, 0.20, 0.20, CLEAR"
    })
    void theTypesReferenceAsksLess(double rise, double before, double overLot, Urgency asks) {
        Jar jar = new Jar().risen(rise, before).overLot(overLot, NAN, NAN).against(Origin.JAR_TYPE);
        assertThat(asks(overBaseline(jar))).isEqualTo(asks);
    }

    @Test
    void likeItsLotExcusesNoRiseOverABaselineOfItsOwn() {
        assertThat(asks(overBaseline(new Jar().risen(0.5, 0.25).overLot(0, 0, 0))))
                .isEqualTo(Urgency.ACT);
    }

    /** 0.4 mΩ and a quarter more are 0.5 mΩ, and half more 0.6 mΩ. */
    @Test
    void theReasonSaysWhatWasSeenAndWhatWouldChangeIt() {
        Reason plan = overBaseline(new Jar().risen(0.3, 0.13));
        assertThat(plan.words())
                .isEqualTo("Impedance 0.520 mΩ (2021-07-10) is +30 % against its baseline of 0.400 mΩ"
                        + " (survey after settling, 2018-07-10); the reading before stood at +13 %.");
        assertThat(plan.wouldChange()).startsWith("A reading below 0.500 mΩ (+25 %), a capacity test");
        Reason act = overBaseline(new Jar().risen(0.55, NAN).against(Origin.ENTERED));
        assertThat(act.words()).endsWith("of 0.400 mΩ (entered); it is the first reading to compare.");
        assertThat(act.wouldChange()).startsWith("A reading below 0.600 mΩ (+50 %)");
    }

    private static @Nullable Reason underBaseline(Jar jar) {
        return JarOhmicRules.underBaseline(jar.done(), LIMITS);
    }

    /** At 20 % under it is read again; borne out and with volts 4 % low a short is likely. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "-0.199, -0.199, -0.05, none",
                "-0.20, -0.10, -0.04, ACT",
                "-0.20, -0.10, -0.039, RECHECK",
                "-0.20, -0.099, -0.04, RECHECK",
                "-0.20, 0.10, -0.04, RECHECK",
                "-0.20, -0.10, 0.04, RECHECK",
                "-0.20, -0.10, NaN, RECHECK",
                "0.20, 0.20, -0.05, none"
            })
    void aFallUnderTheBaselineAsksWithItsVolts(double rise, double before, double volts, @Nullable Urgency asks) {
        Reason reason = underBaseline(new Jar().risen(rise, before).offMedian(volts, NAN));
        assertThat(asks(reason)).isEqualTo(asks);
        if (reason != null) {
            assertThat(reason.words().contains("short inside the jar")).isEqualTo(volts <= -0.04);
            assertThat(reason.words().contains("replaced without record")).isEqualTo(!(volts <= -0.04));
        }
    }

    @Test
    void aFallOffFloatIsReadAgainAtMostAndOneUnderTheTypesReferenceSaysNothing() {
        Jar fallen = new Jar().risen(-0.3, -0.3).offMedian(-0.1, -0.1);
        assertThat(asks(underBaseline(fallen))).isEqualTo(Urgency.ACT);
        assertThat(asks(underBaseline(fallen.offFloat()))).isEqualTo(Urgency.RECHECK);
        assertThat(underBaseline(fallen.against(Origin.JAR_TYPE))).isNull();
    }

    /** Over its lot by 20 % and 4 robust standard deviations; borne out from 10 % on. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "0.20, 0.10, 4, PLAN",
                "0.20, 0.099, 4, RECHECK",
                "0.20, NaN, 4, RECHECK",
                "0.199, 0.10, 4, none",
                "0.20, 0.10, 3.99, none",
                "0.20, 0.10, NaN, none"
            })
    void aJarOverItsLotAsks(double over, double before, double z, @Nullable Urgency asks) {
        Reason reason = JarOhmicRules.overLot(new Jar().overLot(over, before, z).done(), LIMITS);
        assertThat(asks(reason)).isEqualTo(asks);
    }

    /** Clear when its own baseline says that it was always so. */
    @ParameterizedTest
    @CsvSource({"0.199, SURVEY, CLEAR", "0.20, SURVEY, PLAN", "0.199, ENTERED, CLEAR", "0.199, JAR_TYPE, PLAN"})
    void aJarThatWasAlwaysOverItsLotIsNoted(double rise, Origin origin, Urgency asks) {
        Jar jar = new Jar().risen(rise, rise).against(origin).overLot(0.3, 0.3, 9);
        Reason reason = JarOhmicRules.overLot(jar.done(), LIMITS);
        assertThat(asks(reason)).isEqualTo(asks);
        assertThat(reason.words().contains("so since its baseline")).isEqualTo(asks == Urgency.CLEAR);
        assertThat(reason.wouldChange()).isEqualTo("A reading within 20 % of its lot.");
    }

    @Test
    void aJarOverItsLotOffFloatIsReadAgainAtMost() {
        assertThat(asks(JarOhmicRules.overLot(
                        new Jar().overLot(0.3, 0.3, 9).offFloat().done(), LIMITS)))
                .isEqualTo(Urgency.RECHECK);
    }

    /** By 15 %, up or down, beyond the string. */
    @Test
    void aStepOfFifteenPercentIsReadAgain() {
        double edge = Math.log1p(0.15);
        assertThat(asks(JarOhmicRules.step(new Jar().stepped(edge).done(), LIMITS)))
                .isEqualTo(Urgency.RECHECK);
        assertThat(asks(JarOhmicRules.step(new Jar().stepped(-edge).done(), LIMITS)))
                .isEqualTo(Urgency.RECHECK);
        assertThat(JarOhmicRules.step(new Jar().stepped(edge - 1e-9).done(), LIMITS))
                .isNull();
        assertThat(JarOhmicRules.step(new Jar().done(), LIMITS)).isNull();
        assertThat(JarOhmicRules.step(new Jar().stepped(-edge).done(), LIMITS).words())
                .contains("moved by \u221213 % beyond what the string did since 2020-07-10");
    }

    private static @Nullable Reason voltsLow(Jar jar) {
        return JarRules.voltsLow(jar.done(), LIMITS);
    }

    /** Below 2.13 V once and twice; below 2.07 V, twice below 2.13 V. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "2.130, 2.10, none, 0",
                "2.129, 2.130, RECHECK, 90",
                "2.129, 2.129, PLAN, 0",
                "2.129, NaN, RECHECK, 90",
                "2.070, 2.129, PLAN, 0",
                "2.069, 2.129, ACT, 30",
                "2.069, 2.130, RECHECK, 30",
                "NaN, NaN, none, 0"
            })
    void aVentedCellBelowItsLimitsAsks(double perCell, double before, @Nullable Urgency asks, int days) {
        Reason reason = voltsLow(new Jar().vented(2.20, perCell, before, 2.20));
        assertThat(asks(reason)).isEqualTo(asks);
        assertThat(reason == null ? 0 : reason.recheckDays()).isEqualTo(days);
        if (reason != null) {
            assertThat(reason.words()).contains(perCell < 2.07 ? "below 2.070 V" : "below 2.130 V");
        }
    }

    /** Cells of 1.215 gravity are known by a set-point of 2.15 to 2.25 V; without one they are taken for such. */
    @ParameterizedTest
    @CsvSource({"2.15, true", "2.149, false", "2.25, true", "2.251, false", "NaN, true"})
    void theLimitsHoldForCellsOf1215GravityOnly(double setpoint, boolean holds) {
        assertThat(voltsLow(new Jar().vented(setpoint, 2.10, 2.10, 2.20)) != null)
                .isEqualTo(holds);
    }

    @Test
    void aCellIsNotBlamedWhereTheWholeStringFloatsLow() {
        assertThat(voltsLow(new Jar().vented(2.20, 2.10, 2.10, 2.129))).isNull();
        assertThat(voltsLow(new Jar().vented(2.20, 2.10, 2.10, 2.130))).isNotNull();
    }

    /** By 4 %: high is noted, low is read again, and planned for when the one before stood at 2 %. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "0.039, 0.039, none",
                "0.04, 0.04, CLEAR",
                "-0.039, -0.039, none",
                "-0.04, -0.02, PLAN",
                "-0.04, -0.019, RECHECK",
                "-0.04, 0.04, RECHECK",
                "-0.04, NaN, RECHECK",
                "NaN, NaN, none"
            })
    void voltsOffTheMedianAsk(double off, double before, @Nullable Urgency asks) {
        Reason reason = JarRules.voltsOffMedian(new Jar().offMedian(off, before).done(), LIMITS);
        assertThat(asks(reason)).isEqualTo(asks);
    }

    @Test
    void voltsOffTheMedianAreSaidWithASignAndATenthOfAPercent() {
        Reason low = JarRules.voltsOffMedian(new Jar().offMedian(-0.04, NAN).done(), LIMITS);
        assertThat(low.words()).isEqualTo("Floats at 2.160 V, \u22124.0 % off the string's median.");
        assertThat(low.wouldChange()).isEqualTo("A reading on float within 4 % of the median.");
        Reason high = JarRules.voltsOffMedian(new Jar().offMedian(0.052, NAN).done(), LIMITS);
        assertThat(high.words()).isEqualTo("Floats at 2.367 V, +5.2 % off the string's median.");
    }

    /** Noted above 3 K, acted on from 10 K. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {"3, none", "3.1, CLEAR", "9.9, CLEAR", "10, ACT", "-12, none", "NaN, none"})
    void aJarWarmerThanTheMedianAsks(double kelvin, @Nullable Urgency asks) {
        assertThat(asks(JarRules.hot(new Jar().warmer(kelvin).done(), LIMITS))).isEqualTo(asks);
    }

    @Test
    void heatIsSaidWithItsDegrees() {
        Reason hot = JarRules.hot(new Jar().warmer(11.5).done(), LIMITS);
        assertThat(hot.words()).isEqualTo("Is 11.5 K warmer than the median jar (36.5 °C).");
        assertThat(hot.wouldChange()).isEqualTo("A reading within 3.0 K of the median.");
    }

    @ParameterizedTest
    @EnumSource(names = {"READ", "VACANT"})
    void aJarThatWasReadOrIsNotThereNeedsNoReading(JarCase.Presence presence) {
        JarCase jar = new Jar().done();
        assertThat(JarRules.notRead(
                        new JarCase(jar.spell(), jar.type(), presence, jar.ohmic(), jar.volts(), NAN, NAN, true),
                        LIMITS))
                .isNull();
    }
}
