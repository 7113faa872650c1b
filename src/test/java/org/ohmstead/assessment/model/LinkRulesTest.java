package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.kernel.Conductor;
import org.ohmstead.kernel.Conductor.Flexibility;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.Urgency;

class LinkRulesTest {

    private static final Conductor TWO_CABLES = new Conductor("95", Flexibility.CLASS_5, 1.2, 2);

    private static AString settled() {
        return AString.of(12)
                .inServiceSince("2018-01-10")
                .surveyed("2018-07-10")
                .surveyed("2019-07-10")
                .surveyed("2020-07-10");
    }

    private static LinkJudgement link(AString string, int ordinal) {
        return string.judged().links().get(ordinal);
    }

    private static Urgency asks(LinkJudgement link, Rule rule) {
        return link.reasons().stream()
                .filter(reason -> reason.rule() == rule)
                .map(Reason::asks)
                .findFirst()
                .orElseThrow();
    }

    /** Correct when 20 % above its own benchmark: makers' manuals 92.30 and 95.10; RS-1476 p. 26. */
    @Test
    void aFifthOverItsBaselineInTwoReadingsIsToBeCorrected() {
        LinkJudgement link =
                link(settled().linkReads(4, 29).surveyed("2021-07-10").linkReads(4, 31), 4);
        assertThat(link.urgency()).isEqualTo(Urgency.ACT);
        assertThat(link.baseline().takenOn()).isEqualTo(LocalDate.parse("2018-07-10"));
    }

    @Test
    void oneHighReadingIsReadAgainFirst() {
        LinkJudgement link = link(settled().linkReads(4, 60), 4);
        assertThat(asks(link, Rule.LINK_OVER_BASELINE)).isEqualTo(Urgency.RECHECK);
        assertThat(settled().linkReads(4, 60).judged().recheckBy()).isEqualTo(LocalDate.parse("2020-08-09"));
    }

    /** Note when 20 % above the average of its kind: makers' manuals 92.30 and 95.10. */
    @Test
    void aFifthOverTheAverageOfItsKindIsNoted() {
        AString string = AString.of(12).inServiceSince("2010-01-10");
        string.surveyed("2018-07-10").linkReads(4, 31).surveyed("2019-07-10").linkReads(4, 31);
        LinkJudgement link = link(string, 4);
        assertThat(asks(link, Rule.LINK_OVER_KIND)).isEqualTo(Urgency.CLEAR);
        assertThat(link.changeOnKind()).isCloseTo(0.24, within(0.02));
    }

    @Test
    void linksAreOnlyComparedWithinTheirKind() {
        AString string = settled().linkReads(0, 12).linkReads(12, 12);
        assertThat(link(string, 0).changeOnKind()).isNull();
        assertThat(link(string, 5).changeOnKind()).isCloseTo(0, within(0.04));
    }

    /** At remake at most the average +10 % or +5 µΩ: makers' manuals 92.30 §7.7 and 95.10 §7.6. */
    @Test
    void aRemadeLinkAboveTheInstallationCriterionIsReadAgainThenPlanned() {
        AString string =
                settled().withLinkRemade(4, "2021-03-01").surveyed("2021-07-10").linkReads(4, 31);
        assertThat(asks(link(string, 4), Rule.LINK_INSTALLATION)).isEqualTo(Urgency.RECHECK);
        string.surveyed("2021-08-10").linkReads(4, 31);
        assertThat(asks(link(string, 4), Rule.LINK_INSTALLATION)).isEqualTo(Urgency.PLAN);
    }

    @Test
    void aWellRemadeLinkStartsAnewAndIsClear() {
        AString string = settled()
                .linkReads(4, 60)
                .withLinkRemade(4, "2021-03-01")
                .surveyed("2021-07-10")
                .linkReads(4, 29);
        LinkJudgement link = link(string, 4);
        assertThat(link.urgency()).isEqualTo(Urgency.CLEAR);
        assertThat(link.madeOn()).isEqualTo(LocalDate.parse("2021-03-01"));
    }

    @Test
    void puttingInAJarMakesTheLinksBesideItAnew() {
        StringJudgement judged =
                settled().withJar(5, "2020-03-01", null, Double.NaN).judged();
        assertThat(judged.links())
                .filteredOn(link -> link.madeOn().equals(LocalDate.parse("2020-03-01")))
                .extracting(LinkJudgement::ordinal)
                .containsExactly(4, 5);
    }

    /** 30 mV at 300 A is 100 µΩ: makers' manual RS-1476, computed. */
    @Test
    void aHundredMicroohmsDropThirtyMillivoltsAtThreeHundredAmps() {
        LinkJudgement link = link(settled().carrying(300).linkReads(4, 100), 4);
        assertThat(link.dropMillivolts()).isCloseTo(30, within(1e-9));
        assertThat(link.heatWatts()).isCloseTo(9, within(1e-9));
        assertThat(link.reasons()).extracting(Reason::rule).doesNotContain(Rule.LINK_DROP);
        assertThat(link(settled().carrying(300).linkReads(4, 101), 4).reasons())
                .extracting(Reason::rule)
                .contains(Rule.LINK_DROP);
    }

    /** Ohm's law: 40 and 60 µΩ side by side are 24 µΩ. */
    @Test
    void strapsAreCombinedInParallel() {
        LinkJudgement link = link(
                AString.of(6)
                        .withLink(3, LinkKind.STRAP, 2, null)
                        .surveyed("2018-07-10")
                        .linkReads(3, 40, 60),
                3);
        assertThat(link.combinedMicroohms()).isCloseTo(24, within(1e-9));
    }

    @Test
    void aMissingStrapIsSaidAndNotGuessed() {
        StringJudgement judged = AString.of(6)
                .withLink(3, LinkKind.STRAP, 2, null)
                .surveyed("2018-07-10")
                .linkReads(3, 40, Double.NaN)
                .judged();
        assertThat(judged.links().get(3).combinedMicroohms()).isNull();
        assertThat(judged.doubts()).extracting(Doubt::kind).contains(Doubt.Kind.STRAPS_MISSING);
    }

    /** The worked example of IEC 60228: 128.5 µΩ of cable at 30 °C leave 11.5 µΩ of a 140 µΩ reading to the joints. */
    @Test
    void theCableIsTakenOutOfACabledLink() {
        AString string = AString.of(6)
                .withLink(3, LinkKind.TIER_CABLE, 1, TWO_CABLES)
                .surveyed("2018-07-10")
                .linkReads(3, 140)
                .atCelsius(30);
        LinkJudgement link = link(string, 3);
        assertThat(link.conductorMicroohms()).isCloseTo(128.5, within(0.1));
        assertThat(link.netMicroohms()).isCloseTo(11.5, within(0.1));
    }

    /** 130 µΩ of cable and 10 µΩ of joints show +20 % only when the joints have risen by 280 %: computed. */
    @Test
    void aBadLugBehindALongCableIsFoundInTheNetValue() {
        AString string = AString.of(6).withLink(3, LinkKind.TIER_CABLE, 1, TWO_CABLES);
        string.surveyed("2018-07-10").linkReads(3, 140).atCelsius(30);
        string.surveyed("2019-07-10").linkReads(3, 148).atCelsius(30);
        string.surveyed("2020-07-10").linkReads(3, 158).atCelsius(30);
        LinkJudgement link = link(string, 3);
        assertThat(link.combinedMicroohms() / 140 - 1).isLessThan(0.2);
        assertThat(link.changeOnBaseline()).isGreaterThan(1);
        assertThat(link.urgency()).isEqualTo(Urgency.ACT);
    }

    @Test
    void aNetValueBelowZeroIsKeptAndSaid() {
        StringJudgement judged = AString.of(6)
                .withLink(3, LinkKind.TIER_CABLE, 1, TWO_CABLES)
                .surveyed("2018-07-10")
                .linkReads(3, 110)
                .judged();
        LinkJudgement link = judged.links().get(3);
        assertThat(link.cableDominates()).isTrue();
        assertThat(link.netMicroohms()).isNegative();
        assertThat(judged.doubts()).extracting(Doubt::kind).contains(Doubt.Kind.CABLE_DOMINATES);
    }

    /** Planned for from 50 % over its kind when the reading before stood at 25 %: two readings are enough. */
    @Test
    void aJointFarOverItsKindInItsFirstTwoReadingsIsPlannedFor() {
        AString string = AString.of(12).inServiceSince("2010-01-10");
        string.surveyed("2018-07-10").everyLinkReads(24).linkReads(4, 36);
        string.surveyed("2019-07-10").everyLinkReads(24).linkReads(4, 36);
        assertThat(asks(link(string, 4), Rule.LINK_OVER_KIND)).isEqualTo(Urgency.PLAN);
        assertThat(link(string, 4).changeOnKind()).isCloseTo(0.5, within(1e-9));
    }

    /** The criterion beside an average of 25 µΩ is 30 µΩ: at it a joint passes. */
    @Test
    void atTheInstallationCriterionAJointPasses() {
        AString string =
                AString.of(12).surveyed("2018-07-10").everyLinkReads(25).linkReads(4, 30);
        assertThat(link(string, 4).reasons()).extracting(Reason::rule).doesNotContain(Rule.LINK_INSTALLATION);
        assertThat(asks(link(string.linkReads(4, 30.1), 4), Rule.LINK_INSTALLATION))
                .isEqualTo(Urgency.RECHECK);
    }

    /** A first reading within twelve months of the start is an installation record. */
    @Test
    void aFirstReadingAfterAYearIsNoInstallationRecord() {
        AString within = AString.of(12).surveyed("2019-01-09").linkReads(4, 40);
        assertThat(link(within, 4).reasons()).extracting(Reason::rule).contains(Rule.LINK_INSTALLATION);
        AString later = AString.of(12).surveyed("2019-01-10").linkReads(4, 40);
        assertThat(link(later, 4).reasons()).extracting(Reason::rule).doesNotContain(Rule.LINK_INSTALLATION);
    }

    /** Three links of a kind have an average; the two terminals have none. */
    @Test
    void threeOfAKindHaveAnAverage() {
        AString string = AString.of(4).surveyed("2018-07-10").everyLinkReads(25).linkReads(2, 30);
        assertThat(link(string, 2).changeOnKind()).isCloseTo(0.2, within(1e-9));
        assertThat(link(string, 0).kindAverageMicroohms()).isNull();
        assertThat(link(string.linkReads(3, Double.NaN), 2).changeOnKind()).isNull();
    }

    /** A round reads half of the links or more: three of six. */
    @Test
    void aLinkLeftOutOfARoundIsNotedAndOneOutsideARoundIsNot() {
        AString string = AString.of(5).surveyed("2018-07-10").everyLinkReads(Double.NaN);
        string.linkReads(0, 25).linkReads(1, 25);
        assertThat(link(string, 4).reasons()).isEmpty();
        string.linkReads(2, 25);
        assertThat(link(string, 4).reasons()).extracting(Reason::rule).containsExactly(Rule.LINK_NOT_READ);
        assertThat(link(string, 2).reasons()).isEmpty();
        string.surveyed("2019-07-10").everyLinkReads(Double.NaN).linkReads(2, 25);
        assertThat(link(string, 4).reasons()).extracting(Reason::rule).containsExactly(Rule.LINK_NOT_READ);
        string.linkReads(4, 25);
        assertThat(link(string, 4).reasons()).as("read alone since").isEmpty();
    }

    @Test
    void aLinkRemadeSinceTheRoundWasNotLeftOutOfIt() {
        AString before = AString.of(5).withLinkRemade(4, "2018-07-01");
        before.surveyed("2018-07-10").linkReads(4, Double.NaN);
        assertThat(link(before, 4).reasons()).extracting(Reason::rule).containsExactly(Rule.LINK_NOT_READ);
        AString since = AString.of(5).withLinkRemade(4, "2018-08-01");
        since.surveyed("2018-07-10").linkReads(4, Double.NaN);
        assertThat(link(since, 4).reasons()).isEmpty();
    }

    /** A straight line has its own slope: 5 % of the first reading a year. */
    @Test
    void aStraightRiseOfALinkHasItsOwnTrend() {
        AString string = AString.of(6).inServiceSince("2014-01-10");
        for (int year = 0; year < 6; year++) {
            string.surveyed((2015 + year) + "-07-10").linkReads(3, 25 * (1 + 0.05 * year));
        }
        assertThat(link(string, 3).trend().perYear()).isCloseTo(0.05, within(0.0005));
        assertThat(link(string, 3).trend().readings()).isEqualTo(6);
    }

    @Test
    void aLinksBaselineIsShownFromItsSecondReadingOn() {
        AString string = AString.of(6).surveyed("2018-07-10").linkReads(3, 26);
        assertThat(link(string, 3).baseline()).isNull();
        assertThat(link(string, 3).changeOnBaseline()).isNull();
        string.surveyed("2019-07-10").linkReads(3, 26);
        assertThat(link(string, 3).baseline().value()).isCloseTo(26, within(1e-9));
        assertThat(link(string, 3).changeOnBaseline()).isCloseTo(0, within(1e-9));
    }

    @Test
    void whereTheCableDominatesNoChangeIsWorkedOut() {
        AString string = AString.of(6).withLink(3, LinkKind.TIER_CABLE, 1, TWO_CABLES);
        string.surveyed("2018-07-10").linkReads(3, 110);
        string.surveyed("2019-07-10").linkReads(3, 150);
        assertThat(link(string, 3).changeOnBaseline()).isNull();
        assertThat(link(string, 3).trend()).isNull();
        assertThat(link(string, 3).cableDominates()).isFalse();
    }

    @Test
    void nothingLeftForTheJointsMeansThatTheCableDominates() {
        LocalDate day = LocalDate.parse("2018-07-10");
        assertThat(new LinkReading(0, day, 120, 120, 0).cableDominates()).isTrue();
        assertThat(new LinkReading(0, day, 121, 120, 1).cableDominates()).isFalse();
    }

    @Test
    void aCableOfUnknownResistanceIsJudgedWithItAndDoubted() {
        StringJudgement judged = AString.of(6)
                .withLink(3, LinkKind.TIER_CABLE, 1, null)
                .surveyed("2018-07-10")
                .linkReads(3, 140)
                .judged();
        assertThat(judged.links().get(3).netMicroohms()).isCloseTo(140, within(1e-9));
        assertThat(judged.links().get(3).conductorMicroohms()).isNull();
        assertThat(judged.doubts()).extracting(Doubt::kind).contains(Doubt.Kind.CABLE_UNKNOWN);
    }

    @Test
    void aLinkWithoutAnyStrapReadIsNotDoubtedForItsStraps() {
        StringJudgement judged = AString.of(6)
                .withLink(3, LinkKind.STRAP, 2, null)
                .surveyed("2018-07-10")
                .linkReads(3, Double.NaN, 0)
                .judged();
        assertThat(judged.doubts()).extracting(Doubt::kind).doesNotContain(Doubt.Kind.STRAPS_MISSING);
        assertThat(judged.links().get(3).reasons())
                .extracting(Reason::words)
                .containsExactly("Was not read when the others were.");
    }

    @Test
    void oneStrapOfTwoIsSaidToBeOne() {
        LinkJudgement link = link(
                AString.of(6)
                        .withLink(3, LinkKind.STRAP, 2, null)
                        .surveyed("2018-07-10")
                        .linkReads(3, 40, Double.NaN),
                3);
        assertThat(link.reasons())
                .extracting(Reason::words)
                .containsExactly("Only 1 of 2 straps were read: they cannot be combined.");
    }

    @Test
    void aSurveyThatRecordedFewerLinksLeavesTheLastOnesOut() {
        AString string = AString.of(6).surveyed("2018-07-10").withoutLinksFrom(6);
        assertThat(link(string, 6).combinedMicroohms()).isNull();
        assertThat(link(string, 6).reasons()).extracting(Reason::rule).containsExactly(Rule.LINK_NOT_READ);
        assertThat(link(string, 5).combinedMicroohms()).isNotNull();
    }

    @Test
    void aRemakeMakesItsOwnLinkAnew() {
        StringJudgement judged = settled().withLinkRemade(4, "2020-03-01").judged();
        assertThat(judged.links())
                .filteredOn(link -> link.madeOn().equals(LocalDate.parse("2020-03-01")))
                .extracting(LinkJudgement::ordinal)
                .containsExactly(4);
    }

    @ParameterizedTest
    @CsvSource({"1, 0, 1", "12, 11, 12"})
    void aJarAtTheEndOfTheStringMakesItsTerminalLinkAnewToo(int position, int one, int other) {
        StringJudgement judged =
                settled().withJar(position, "2020-03-01", null, Double.NaN).judged();
        assertThat(judged.links())
                .filteredOn(link -> link.madeOn().equals(LocalDate.parse("2020-03-01")))
                .extracting(LinkJudgement::ordinal)
                .containsExactly(one, other);
    }

    @Test
    void aLinkNeverReadIsComparedWithNothing() {
        LinkJudgement link = link(AString.of(6).surveyed("2018-07-10").linkReads(3, Double.NaN), 3);
        assertThat(link.changeOnKind()).isNull();
        assertThat(link.kindAverageMicroohms()).isNull();
        assertThat(link.dropMillivolts()).isNull();
    }

    @Test
    void oneStrapOfThreeIsSaidToBeOne() {
        LinkJudgement link = link(
                AString.of(6)
                        .withLink(3, LinkKind.STRAP, 3, null)
                        .surveyed("2018-07-10")
                        .linkReads(3, 40, Double.NaN, 0),
                3);
        assertThat(link.reasons())
                .extracting(Reason::words)
                .containsExactly("Only 1 of 3 straps were read: they cannot be combined.");
    }

    /** Each survey has an average of its own: half over 24 µΩ, then half over 48 µΩ. */
    @Test
    void aReadingIsHeldAgainstTheAverageOfItsOwnSurvey() {
        AString string = AString.of(12).inServiceSince("2010-01-10");
        string.surveyed("2018-07-10").everyLinkReads(24).linkReads(4, 36);
        string.surveyed("2019-07-10").everyLinkReads(48).linkReads(4, 72);
        assertThat(asks(link(string, 4), Rule.LINK_OVER_KIND)).isEqualTo(Urgency.PLAN);
    }

    /** Remade on the day of a survey, the reading counts as taken after. */
    @Test
    void aReadingOnTheDayOfARemakeIsTheFirstOfTheNewJoint() {
        AString string = settled().withLinkRemade(4, "2020-07-10");
        assertThat(link(string, 4).readOn()).isEqualTo(LocalDate.parse("2020-07-10"));
        string.surveyed("2021-07-10");
        assertThat(link(string, 4).baseline().takenOn()).isEqualTo(LocalDate.parse("2020-07-10"));
        assertThat(link(string, 5).baseline().takenOn()).isEqualTo(LocalDate.parse("2018-07-10"));
    }
}
