package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.Urgency;

/** The rows of docs/assessment.md, "the rules find", that speak of links: at each limit and just short of it. */
class LinkLimitsTest {

    private static final double NAN = Double.NaN;
    private static final LocalDate DAY = LocalDate.parse("2021-07-10");
    private static final LocalDate MADE = LocalDate.parse("2018-01-10");
    private static final Limits LIMITS = Limits.standard();

    /** A strap first read at 25 µΩ, of a kind that averages 25 µΩ; what is asked about is set, the rest is missing. */
    private static final class Link {

        private LinkKind kind = LinkKind.STRAP;
        private LocalDate firstOn = MADE.plusMonths(6);
        private double firstNet = 25;
        private double lastNet = 25;
        private double conductor;
        private int count = 3;
        private double rise = NAN;
        private double riseBefore = NAN;
        private double kindRise = NAN;
        private double kindRiseBefore = NAN;
        private int overInstallation;
        private boolean skipped;
        private int straps = 1;
        private int strapsRead = 1;
        private double amps = NAN;

        Link risen(double now, double before) {
            rise = now;
            riseBefore = before;
            lastNet = firstNet * (1 + now);
            return this;
        }

        Link cabled(double ofCable, double first, double last) {
            kind = LinkKind.TIER_CABLE;
            conductor = ofCable;
            firstNet = first;
            lastNet = last;
            rise = last / first - 1;
            riseBefore = rise;
            return this;
        }

        Link overKind(double now, double before, int readings) {
            kindRise = now;
            kindRiseBefore = before;
            count = readings;
            return this;
        }

        Link overInstallation(int readings) {
            overInstallation = readings;
            return this;
        }

        Link firstReadOn(LocalDate day) {
            firstOn = day;
            return this;
        }

        Link carrying(double designAmps, double microohms) {
            amps = designAmps;
            lastNet = microohms;
            return this;
        }

        Link ofKind(LinkKind other) {
            kind = other;
            return this;
        }

        Link skippedWithStraps(int read, int of) {
            skipped = true;
            strapsRead = read;
            straps = of;
            return this;
        }

        LinkCase done() {
            boolean known = !Double.isNaN(conductor);
            double gross = known ? conductor : 0;
            return new LinkCase(
                    new Joint(new LinkPlan(4, kind, straps, null), MADE, false),
                    count,
                    new LinkReading(0, firstOn, firstNet + gross, conductor, firstNet),
                    new LinkReading(2, DAY, lastNet + gross, conductor, lastNet),
                    rise,
                    riseBefore,
                    25,
                    kindRise,
                    kindRiseBefore,
                    overInstallation,
                    skipped,
                    strapsRead,
                    amps,
                    null);
        }
    }

    private static @Nullable Urgency asks(@Nullable Reason reason) {
        return reason == null ? null : reason.asks();
    }

    /** By 20 %; borne out from 10 % on; read again within 30 days either way. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "0.199, 0.199, none, 0",
                "0.20, 0.10, ACT, 30",
                "0.20, 0.099, RECHECK, 30",
                "0.20, NaN, RECHECK, 30",
                "NaN, NaN, none, 0"
            })
    void aRiseOverTheFirstReadingAsks(double rise, double before, @Nullable Urgency asks, int days) {
        Reason reason = LinkRules.overBaseline(new Link().risen(rise, before).done(), LIMITS);
        assertThat(asks(reason)).isEqualTo(asks);
        assertThat(reason == null ? 0 : reason.recheckDays()).isEqualTo(days);
    }

    @Test
    void theReasonSaysWhatWasSeenAndWhatWouldChangeIt() {
        Reason reason = LinkRules.overBaseline(new Link().risen(0.24, 0.12).done(), LIMITS);
        assertThat(reason.words())
                .startsWith("Its resistance, 31.0 µΩ (2021-07-10), is +24 % against 25.0 µΩ when first read since it"
                        + " was made (2018-07-10); the reading before stood at +12 %. Read it again;");
        assertThat(reason.wouldChange()).isEqualTo("A reading below 30.0 µΩ, or a recorded remake.");
        assertThat(LinkRules.overBaseline(new Link().risen(0.24, NAN).done(), LIMITS)
                        .words())
                .contains("(2018-07-10). Read it again;");
    }

    /** A change within 10 % of the whole reading is no change: of 160 µΩ with 128 µΩ of cable, 16 µΩ. */
    @ParameterizedTest
    @CsvSource({"16, 32, true", "16.5, 32, false", "16, 31.5, false"})
    void aCabledLinksChangeMustExceedTheNoiseOfTheWholeReading(double first, double last, boolean asks) {
        Reason reason =
                LinkRules.overBaseline(new Link().cabled(128, first, last).done(), LIMITS);
        assertThat(reason != null).isEqualTo(asks);
    }

    @Test
    void aCabledLinkIsSaidWithoutItsCableWhereThatIsKnown() {
        assertThat(LinkRules.overBaseline(new Link().cabled(100, 10, 60).done(), LIMITS)
                        .words())
                .startsWith("Its joints without the cable, 60.0 µΩ");
        assertThat(LinkRules.overBaseline(new Link().cabled(NAN, 10, 60).done(), LIMITS)
                        .words())
                .startsWith("Its resistance, 60.0 µΩ");
    }

    /** Installation criterion beside an average of 25 µΩ: 30 µΩ. */
    @Test
    void aNewJointOverTheCriterionIsReadAgainSoonThenPlannedFor() {
        assertThat(LinkRules.installation(new Link().done(), LIMITS)).isNull();
        Reason first = LinkRules.installation(new Link().overInstallation(1).done(), LIMITS);
        assertThat(first.asks()).isEqualTo(Urgency.RECHECK);
        assertThat(first.recheckDays()).isEqualTo(30);
        assertThat(first.wouldChange()).isEqualTo("A reading of 30.0 µΩ or less.");
        Reason second = LinkRules.installation(new Link().overInstallation(2).done(), LIMITS);
        assertThat(second.asks()).isEqualTo(Urgency.PLAN);
        assertThat(second.recheckDays()).isZero();
    }

    @Test
    void aReadingOnTheDayTheJointWasMadeIsAskedAbout() {
        Link link = new Link().overInstallation(1);
        assertThat(LinkRules.installation(link.done(), LIMITS).words()).doesNotContain("before or after?");
        assertThat(LinkRules.installation(link.firstReadOn(MADE).done(), LIMITS).words())
                .contains("read on the day it was made: was that before or after?");
    }

    /** By 20 %: noted with a baseline of its own, read again without; planned for at 50 % when 25 % stood before. */
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "0.199, 0.199, 3, none",
                "0.20, 0.20, 2, CLEAR",
                "0.20, NaN, 1, RECHECK",
                "0.499, 0.499, 2, CLEAR",
                "0.50, 0.25, 2, PLAN",
                "0.50, 0.249, 2, CLEAR",
                "0.50, NaN, 1, RECHECK"
            })
    void aLinkOverItsKindAsks(double over, double before, int readings, @Nullable Urgency asks) {
        Reason reason =
                LinkRules.overKind(new Link().overKind(over, before, readings).done(), LIMITS);
        assertThat(asks(reason)).isEqualTo(asks);
        if (reason != null) {
            assertThat(reason.wouldChange()).isEqualTo("A reading within 20 % of the average of its kind.");
        }
    }

    /** Ohm's law: 30 mV at 300 A is 100 µΩ, 100 mV is 333.3 µΩ. */
    @ParameterizedTest
    @CsvSource({
        "STRAP, 100, false",
        "STRAP, 100.1, true",
        "TERMINAL, 100.1, true",
        "TIER_CABLE, 333.3, false",
        "ROW_CABLE, 333.4, true"
    })
    void aDropOverItsLimitIsFound(LinkKind kind, double microohms, boolean found) {
        Reason reason =
                LinkRules.drop(new Link().ofKind(kind).carrying(300, microohms).done(), LIMITS);
        assertThat(reason != null).isEqualTo(found);
        if (reason != null) {
            assertThat(reason.wouldChange())
                    .isEqualTo(kind.isCable() ? "A reading below 333.3 µΩ." : "A reading below 100.0 µΩ.");
        }
    }

    /** Clear where its kind does too. */
    @ParameterizedTest
    @CsvSource({"0.199, CLEAR", "0.20, PLAN", "NaN, PLAN"})
    void aDropThatItsKindSharesIsAMatterOfDesign(double overKind, Urgency asks) {
        Reason reason = LinkRules.drop(
                new Link().overKind(overKind, NAN, 3).carrying(300, 120).done(), LIMITS);
        assertThat(reason.asks()).isEqualTo(asks);
        assertThat(reason.words()).startsWith("Drops 36 mV at the design current of 300.0 A, more than 30 mV.");
        assertThat(reason.words().contains("So does its kind")).isEqualTo(asks == Urgency.CLEAR);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 2, Was not read when the others were.",
        "1, 2, Only 1 of 2 straps were read: they cannot be combined.",
        "2, 2, Was not read when the others were."
    })
    void aLinkThatWasNotReadIsNoted(int read, int straps, String words) {
        Reason reason =
                LinkRules.notRead(new Link().skippedWithStraps(read, straps).done(), LIMITS);
        assertThat(reason.asks()).isEqualTo(Urgency.CLEAR);
        assertThat(reason.words()).isEqualTo(words);
        assertThat(LinkRules.notRead(new Link().done(), LIMITS)).isNull();
    }
}
