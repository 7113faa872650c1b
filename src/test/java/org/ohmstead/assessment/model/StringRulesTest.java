package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.Urgency;

/** The rows of docs/assessment.md, "the rules find", that speak of the string: at each limit and just short of it. */
class StringRulesTest {

    private static final double NAN = Double.NaN;
    private static final Limits LIMITS = Limits.standard();

    /** A string of which nothing is known but what is asked about. */
    private static final class Whole {

        private double perCell = NAN;
        private double off = NAN;
        private double offBefore = NAN;
        private double spread = NAN;
        private double ripple = NAN;
        private double rippleBefore = NAN;
        private double rise = NAN;
        private double riseBefore = NAN;
        private double age = NAN;
        private double expected = NAN;

        Whole risen(double now, double before) {
            rise = now;
            riseBefore = before;
            return this;
        }

        Whole floatingOff(double now, double before) {
            off = now;
            offBefore = before;
            perCell = 2.25 + now;
            return this;
        }

        Whole rippling(double now, double before) {
            ripple = now;
            rippleBefore = before;
            return this;
        }

        Whole spreadOver(double kelvin) {
            spread = kelvin;
            return this;
        }

        Whole aged(double years, double of) {
            age = years;
            expected = of;
            return this;
        }

        StringCase done() {
            Panel panel = new Panel(AString.of(2).surveyed("2021-07-10").history(), LIMITS);
            return new StringCase(
                    panel,
                    List.of(),
                    List.of(),
                    perCell,
                    2.25,
                    off,
                    offBefore,
                    spread,
                    ripple,
                    rippleBefore,
                    rise,
                    riseBefore,
                    NAN,
                    age,
                    expected);
        }
    }

    private static @Nullable Urgency asks(@Nullable Reason reason) {
        return reason == null ? null : reason.asks();
    }

    @Test
    void aStringOfWhichNothingIsKnownSaysNothing() {
        assertThat(StringRules.judge(new Whole().done(), LIMITS)).isEmpty();
    }

    /** The median jar 20 % over its own baseline; borne out from 10 % on. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {"0.199, 0.199, none", "0.20, 0.10, PLAN", "0.20, 0.099, RECHECK", "0.20, NaN, RECHECK"})
    void aStringRisenAsAWholeAsks(double rise, double before, @Nullable Urgency asks) {
        assertThat(asks(StringRules.risen(new Whole().risen(rise, before).done(), LIMITS)))
                .isEqualTo(asks);
    }

    /** Noted from 20 mV per cell, asked about from 50 mV; borne out from 25 mV on, in either direction. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "0.019, 0.019, none",
                "0.02, 0.02, CLEAR",
                "-0.02, -0.02, CLEAR",
                "0.049, 0.049, CLEAR",
                "0.05, 0.025, PLAN",
                "-0.05, -0.025, PLAN",
                "-0.05, 0.025, PLAN",
                "0.05, 0.024, RECHECK",
                "-0.05, NaN, RECHECK"
            })
    void aFloatVoltageOffItsSetPointAsks(double off, double before, @Nullable Urgency asks) {
        Reason reason =
                StringRules.floatVoltage(new Whole().floatingOff(off, before).done(), LIMITS);
        assertThat(asks(reason)).isEqualTo(asks);
    }

    @Test
    void aFloatVoltageIsSaidBesideWhatTheSetPointAsksFor() {
        Reason reason =
                StringRules.floatVoltage(new Whole().floatingOff(-0.06, NAN).done(), LIMITS);
        assertThat(reason.words())
                .isEqualTo(
                        "Floats at 2.190 V per cell; the set-point asks for 2.250 V at the temperature it was read.");
        assertThat(reason.wouldChange()).isEqualTo("Charger set to within 0.020 V per cell.");
        assertThat(reason.recheckDays()).isEqualTo(90);
    }

    /** More than 5 A rms per 100 Ah; borne out from 2.5 A on. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {"5, 5, none", "5.1, 2.5, PLAN", "5.1, 2.4, RECHECK", "5.1, NaN, RECHECK"})
    void rippleAsks(double ripple, double before, @Nullable Urgency asks) {
        assertThat(asks(StringRules.ripple(new Whole().rippling(ripple, before).done(), LIMITS)))
                .isEqualTo(asks);
    }

    /** More than 3 K between jars. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {"3, none", "3.1, CLEAR", "20, CLEAR"})
    void jarsThatDifferInTemperatureAreNoted(double kelvin, @Nullable Urgency asks) {
        Reason reason =
                StringRules.temperatureSpread(new Whole().spreadOver(kelvin).done(), LIMITS);
        assertThat(asks(reason)).isEqualTo(asks);
    }

    /** Noted from 85 % of the expected life, planned for from 100 %. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {"8.49, none", "8.5, CLEAR", "9.99, CLEAR", "10, PLAN", "10.1, PLAN"})
    void ageAsks(double years, @Nullable Urgency asks) {
        assertThat(asks(StringRules.age(new Whole().aged(years, 10).done(), LIMITS)))
                .isEqualTo(asks);
    }

    @Test
    void ageIsSaidInYearsAndAsAShare() {
        assertThat(StringRules.age(new Whole().aged(9, 10).done(), LIMITS).words())
                .isEqualTo("9.0 years old, 90 % of the 10.0 years expected at the temperature it lives in.");
        assertThat(StringRules.age(new Whole().aged(9, NAN).done(), LIMITS)).isNull();
    }

    /** 30 mV at 300 A is 100 µΩ; cables may drop more and do not count. */
    @ParameterizedTest
    @CsvSource({"100, 100, 100, false", "101, 101, 100, false", "101, 101, 101, true"})
    void moreThanHalfOfTheLinksOverTheirDropAreAMatterOfDesign(double one, double two, double three, boolean said) {
        StringJudgement judged = AString.of(4)
                .withLink(2, LinkKind.TIER_CABLE, 1, null)
                .carrying(300)
                .surveyed("2021-07-10")
                .linkReads(0, one)
                .linkReads(1, two)
                .linkReads(2, 150)
                .linkReads(3, three)
                .linkReads(4, 50)
                .judged();
        assertThat(judged.reasons().stream().filter(reason -> reason.rule() == Rule.STRING_DROP))
                .hasSize(said ? 1 : 0)
                .allSatisfy(reason -> assertThat(reason.words())
                        .startsWith("3 of 5 links drop more than 30 mV at the design current:"));
    }

    @Test
    void exactlyHalfOfTheLinksAreNotMost() {
        AString string = AString.of(3)
                .carrying(300)
                .surveyed("2021-07-10")
                .linkReads(0, 101)
                .linkReads(1, 101);
        assertThat(string.judged().reasons()).isEmpty();
    }
}
