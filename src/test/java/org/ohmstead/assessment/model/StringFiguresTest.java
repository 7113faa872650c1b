package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;
import org.ohmstead.kernel.Urgency;

/** What is worked out of a string as a whole, and what is left out where it was not read. */
class StringFiguresTest {

    private static final double NAN = Double.NaN;

    private static StringFigures figures(AString string) {
        return string.judged().figures();
    }

    private static StringCase of(AString string) {
        Limits limits = Limits.standard();
        Panel panel = new Panel(string.history(), limits);
        List<JarCase> jars = IntStream.rangeClosed(1, string.history().plan().positions())
                .mapToObj(position -> JarCase.of(panel, position, limits))
                .toList();
        return StringCase.of(panel, jars, List.of(), limits);
    }

    private static AString withoutVolts(AString string) {
        for (int position = 1; position <= 6; position++) {
            string.jarFloatsAt(position, NAN);
        }
        return string.withStringVolts(NAN);
    }

    private static Urgency asks(StringJudgement judged, Rule rule) {
        return judged.reasons().stream()
                .filter(reason -> reason.rule() == rule)
                .map(Reason::asks)
                .findFirst()
                .orElse(null);
    }

    /** Six jars of six cells at 81.0 V float at 2.25 V a cell, and so do 13.5 V of each. */
    @Test
    void floatVoltageIsThatOfACell() {
        AString string = AString.of(6).ofCells(6).surveyed("2018-07-10").withStringVolts(81.36);
        assertThat(figures(string).floatVoltsPerCell()).isCloseTo(2.26, within(1e-12));
        assertThat(figures(string.withStringVolts(NAN)).floatVoltsPerCell()).isCloseTo(2.25, within(1e-12));
    }

    @Test
    void whereNoVoltsWereReadTheLastOnesStand() {
        AString string =
                AString.of(6).surveyed("2018-07-10").withStringVolts(6 * 2.28).surveyed("2019-07-10");
        assertThat(figures(withoutVolts(string)).floatVoltsPerCell()).isCloseTo(2.28, within(1e-12));
        assertThat(figures(withoutVolts(AString.of(6).surveyed("2018-07-10"))).floatVoltsPerCell())
                .isNull();
    }

    @Test
    void floatVoltageIsBorneOutByTheSurveyBeforeThatReadIt() {
        AString string = AString.of(6).surveyed("2018-07-10").withStringVolts(6 * 2.31);
        assertThat(of(string).floatOffBefore()).isNaN();
        assertThat(asks(string.judged(), Rule.STRING_FLOAT)).isEqualTo(Urgency.RECHECK);
        withoutVolts(string.surveyed("2019-07-10"));
        string.surveyed("2020-07-10").withStringVolts(6 * 2.32);
        assertThat(of(string).floatOffBefore()).isCloseTo(0.06, within(1e-12));
        assertThat(asks(string.judged(), Rule.STRING_FLOAT)).isEqualTo(Urgency.PLAN);
    }

    @Test
    void aRippleOfNothingIsAReadingAndAMissingOneIsNot() {
        AString string = AString.of(6).surveyed("2018-07-10").withRipple(7).surveyed("2019-07-10");
        assertThat(figures(string).rippleAmpsPer100Ah()).isCloseTo(7, within(1e-12));
        assertThat(figures(string.withRipple(0)).rippleAmpsPer100Ah()).isZero();
        assertThat(of(string).ripplePer100AhBefore()).isCloseTo(7, within(1e-12));
    }

    @Test
    void twoTemperaturesHaveASpreadAndOneHasNone() {
        AString string = AString.of(6).surveyed("2018-07-10").atCelsius(NAN).jarIsAt(2, 21);
        assertThat(of(string).celsiusSpread()).isNaN();
        assertThat(of(string.jarIsAt(5, 26)).celsiusSpread()).isEqualTo(5);
    }

    /** The missing ones are taken as the median while half were read. */
    @Test
    void theTotalOfTheJarsNeedsHalfOfThem() {
        AString string = AString.of(6).surveyed("2018-07-10").everyJarReads(0.4).jarReads(1, 0.5);
        string.jarReads(4, NAN).jarReads(5, NAN).jarReads(6, NAN);
        assertThat(figures(string).totalJarMilliohms()).isCloseTo(0.5 + 5 * 0.4, within(1e-12));
        assertThat(figures(string.jarReads(3, NAN)).totalJarMilliohms()).isNull();
    }

    @Test
    void conductanceHasNoTotalInMilliohms() {
        assertThat(figures(AString.of(6).surveyed("2018-07-10").inKind(OhmicKind.CONDUCTANCE))
                        .totalJarMilliohms())
                .isNull();
    }

    /** Of 0.4 and 0.6 mΩ: each lies 0.1 from the middle of 0.5; robust spread 1.4826 × 0.1 / 0.5. */
    @Test
    void twoJarsScatterAndOneDoesNot() {
        AString string = AString.of(2).surveyed("2018-07-10").jarReads(1, 0.4).jarReads(2, 0.6);
        assertThat(figures(string).scatter()).isCloseTo(0.29652, within(1e-9));
        assertThat(figures(string.jarReads(2, NAN)).scatter()).isNull();
    }

    /** Against an entered 0.5 mΩ a reading of 0.625 mΩ stands a quarter over, exactly. */
    @Test
    void aJarAtTheNoteLimitIsNearIt() {
        AString string = AString.of(4).withJar(2, "2018-01-10", null, 0.5).surveyed("2018-07-10");
        string.surveyed("2019-07-10").jarReads(2, 0.625);
        Limits quarter = Limits.standard().with(Limit.JAR_RISE_NOTE, 0.25);
        assertThat(string.judged(quarter).figures().shareNearLimit()).isEqualTo(0.25);
        assertThat(string.judged(quarter.with(Limit.JAR_RISE_NOTE, 0.26))
                        .figures()
                        .shareNearLimit())
                .isZero();
    }

    /** None in ordinary rooms, 0 °C among them; at −1 °C counted from 20 °C: 21 K × 3 mV. Ni-Cd manual p. 22. */
    @Test
    void nickelCadmiumIsCompensatedBelowZeroOnly() {
        assertThat(FloatVoltage.perCell(Technology.NICKEL_CADMIUM, 1.41, 0)).isEqualTo(1.41);
        assertThat(FloatVoltage.perCell(Technology.NICKEL_CADMIUM, 1.41, -1)).isCloseTo(1.473, within(1e-12));
    }

    /** Four years of 1,461 days to the day, of eight and of four. */
    @Test
    void ageAsksForATestFromItsLimitOnAndForRenewalOnceTheLifeIsOver() {
        AString halfway = AString.of(5).inServiceSince("2014-07-10").designedForYears(8);
        halfway.surveyed("2018-07-10");
        Limits half = Limits.standard().with(Limit.LIFE_TEST, 0.5);
        assertThat(halfway.judged(half).advice()).extracting(Advice::kind).containsExactly(Advice.Kind.TEST_CAPACITY);
        assertThat(halfway.judged(half.with(Limit.LIFE_TEST, 0.51)).advice()).isEmpty();
    }

    /** Past its expected life and a fifth of its jars over a limit. */
    @Test
    void aStringIsRenewedWhenItsLifeIsOverAndAFifthOfItsJarsStandOverALimit() {
        AString string = AString.of(5).inServiceSince("2014-07-10").designedForYears(4);
        string.surveyed("2015-07-10").surveyed("2017-07-10").jarChanges(2, 1.3);
        string.surveyed("2018-07-10");
        assertThat(string.judged().advice()).extracting(Advice::kind).doesNotContain(Advice.Kind.RENEW_STRING);
        string.jarChanges(2, 1.4);
        assertThat(string.judged().advice())
                .extracting(Advice::kind)
                .contains(Advice.Kind.TEST_CAPACITY, Advice.Kind.RENEW_STRING)
                .doesNotContain(Advice.Kind.REPLACE_JARS);
        assertThat(string.judged().advice())
                .extracting(Advice::words)
                .contains("Plan to renew the string: 1 of 5 jars are over their limit.");
        StringJudgement younger = string.designedForYears(4.01).judged();
        assertThat(younger.advice()).extracting(Advice::kind).doesNotContain(Advice.Kind.RENEW_STRING);
        StringJudgement fewer =
                string.designedForYears(4).judged(Limits.standard().with(Limit.RENEW_SHARE, 0.21));
        assertThat(fewer.advice())
                .extracting(Advice::kind)
                .contains(Advice.Kind.REPLACE_JARS)
                .doesNotContain(Advice.Kind.RENEW_STRING);
    }

    @Test
    void theHeadlineTellsTheMostUrgentFindingOfTheString() {
        AString string = AString.of(6).surveyed("2018-07-10").withRipple(7).surveyed("2019-07-10");
        string.withRipple(7).withStringVolts(6 * 2.28);
        StringJudgement judged = string.judged();
        assertThat(judged.reasons()).extracting(Reason::rule).containsExactly(Rule.STRING_RIPPLE, Rule.STRING_FLOAT);
        assertThat(judged.headline()).startsWith("Plan: Ripple current is 7.0 A rms per 100 Ah, more than 5.0");
    }

    /** The largest rise over the baseline; what was never read has none. */
    @Test
    void theWeakestJarAndLinkHaveTheLargestRise() {
        AString string = AString.of(8).surveyed("2018-07-10").jarReads(3, NAN).linkReads(2, NAN);
        string.surveyed("2019-07-10").jarReads(3, NAN).linkReads(2, NAN);
        string.jarChanges(5, 1.1).linkReads(4, 29);
        assertThat(figures(string).weakestPosition()).isEqualTo(5);
        assertThat(figures(string).weakestLink()).isEqualTo(4);
    }

    @Test
    void inAFirstSurveyTheWeakestStandFarthestOverTheirLike() {
        AString string = AString.of(8).surveyed("2018-07-10").jarReads(2, 0.5).linkReads(3, 30);
        assertThat(figures(string).weakestPosition()).isEqualTo(2);
        assertThat(figures(string).weakestLink()).isEqualTo(3);
        assertThat(figures(AString.of(8)).weakestPosition()).isNull();
        assertThat(figures(AString.of(8)).weakestLink()).isNull();
    }

    /** Of four jars one has no baseline: one of three. */
    @Test
    void jarsWithoutABaselineAreLeftOutOfTheShareNearTheLimit() {
        AString string = AString.of(4).withJar(4, "2019-01-10", null, NAN);
        string.surveyed("2018-07-10").surveyed("2019-07-10").jarChanges(2, 1.3);
        assertThat(figures(string).shareNearLimit()).isCloseTo(1 / 3.0, within(1e-12));
    }

    private static StringJudgement twoOfEach() {
        AString string = AString.of(24).surveyed("2018-07-10");
        for (String day : new String[] {"2019-07-10", "2020-07-10"}) {
            string.surveyed(day).jarChanges(3, 1.6).jarChanges(9, 1.9).jarChanges(12, 1.7);
            string.linkReads(4, 40).linkReads(15, 50).linkReads(20, 45);
        }
        return string.judged();
    }

    @Test
    void theHeadlineTellsTheFarthestJarAndCountsTheOthers() {
        assertThat(twoOfEach().headline()).startsWith("Act: jar 9 – Impedance").endsWith(" And 5 more.");
    }

    @Test
    void theHeadlineTellsTheFarthestLinkWhereNoJarAsksAsMuch() {
        AString string = AString.of(24).surveyed("2018-07-10");
        for (String day : new String[] {"2019-07-10", "2020-07-10"}) {
            string.surveyed(day).linkReads(4, 40).linkReads(15, 50).linkReads(20, 45);
        }
        assertThat(string.judged().headline())
                .startsWith("Act: link 15 – Its resistance, 50.0 µΩ")
                .endsWith(" And 2 more.");
    }

    @Test
    void aHeadlineOfOneFindingCountsNoOthers() {
        AString string =
                AString.of(24).surveyed("2018-07-10").surveyed("2019-07-10").jarIsAt(9, 36);
        assertThat(string.judged().headline())
                .isEqualTo("Act: jar 9 – Is 11.0 K warmer than the median jar (36.0 °C).");
    }

    @Test
    void theHeadlineOfAClearStringCountsTheJarsRead() {
        AString string = AString.of(6).withJar(3, "2019-08-01", null, NAN);
        string.surveyed("2018-07-10").surveyed("2019-07-10");
        assertThat(string.judged().headline()).isEqualTo("Nothing asks for attention; 5 of 6 jars have been read.");
    }

    @Test
    void jarsAndLinksAreReadAgainOrWorkedOnByName() {
        assertThat(twoOfEach().advice())
                .extracting(Advice::words)
                .containsExactly(
                        "Remake link 4, 15, 20 with charger and load off, then read as left.",
                        "Test alone or replace jar 3, 9, 12.");
        AString once = AString.of(24).surveyed("2018-07-10").surveyed("2019-07-10");
        once.jarChanges(7, 1.6).linkReads(4, 40);
        assertThat(once.judged().advice()).extracting(Advice::words).containsExactly("Read again: jar 7; link 4.");
    }

    /** One of five is a fifth. */
    @Test
    void aFifthOfTheJarsOverALimitAsksForACapacityTest() {
        AString string =
                AString.of(5).surveyed("2018-07-10").surveyed("2019-07-10").jarChanges(2, 1.3);
        string.surveyed("2020-07-10").jarChanges(2, 1.4);
        assertThat(string.judged().advice()).extracting(Advice::kind).containsExactly(Advice.Kind.TEST_CAPACITY);
        assertThat(string.judged(Limits.standard().with(Limit.RENEW_SHARE, 0.21))
                        .advice())
                .extracting(Advice::kind)
                .containsExactly(Advice.Kind.REPLACE_JARS);
    }

    @Test
    void aJudgementNamesItsSurvey() {
        assertThat(AString.of(5).surveyed("2018-07-10").judged().surveyId()).isEqualTo(1);
    }
}
