package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Comparator;
import org.junit.jupiter.api.Test;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;
import org.ohmstead.kernel.Urgency;

class JarRulesTest {

    private static AString settled() {
        return AString.of(24)
                .inServiceSince("2018-01-10")
                .surveyed("2018-07-10")
                .surveyed("2019-07-10")
                .surveyed("2020-07-10");
    }

    private static JarJudgement jar(StringJudgement judgement, int position) {
        return judgement.jars().get(position - 1);
    }

    private static Reason reason(JarJudgement jar, Rule rule) {
        return jar.reasons().stream()
                .filter(reason -> reason.rule() == rule)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aStringThatReadsAsUsualIsClear() {
        StringJudgement judged = settled().judged();
        assertThat(judged.urgency()).isEqualTo(Urgency.CLEAR);
        assertThat(judged.recheckBy()).isNull();
        assertThat(judged.headline()).isEqualTo("Nothing asks for attention in 24 jars and their links.");
    }

    /** Within ±20 % acceptable: VRLA manual RS-2044 p. 24. */
    @Test
    void nineteenPercentOverBaselineIsAcceptable() {
        StringJudgement judged = settled()
                .jarChanges(7, 1.1)
                .surveyed("2021-07-10")
                .jarChanges(7, 1.19)
                .judged();
        assertThat(jar(judged, 7).urgency()).isEqualTo(Urgency.CLEAR);
        assertThat(jar(judged, 7).reasons()).isEmpty();
    }

    /** The act point of 25 to 30 % over baseline is from memory (commentary to IEEE 1188). */
    @Test
    void aThirdOverBaselineInTwoReadingsAsksForAPlan() {
        StringJudgement judged = settled()
                .jarChanges(7, 1.2)
                .surveyed("2021-07-10")
                .jarChanges(7, 1.33)
                .judged();
        assertThat(jar(judged, 7).urgency()).isEqualTo(Urgency.PLAN);
        assertThat(jar(judged, 7).changeOnBaseline()).isCloseTo(0.33, within(1e-9));
        assertThat(reason(jar(judged, 7), Rule.JAR_OVER_BASELINE).words())
                .contains("+33 %", "survey after settling, 2018-07-10", "mΩ");
    }

    /** Over 50 % needs attention: VRLA manual RS-2044 p. 24. */
    @Test
    void halfOverBaselineInTwoReadingsAsksForAction() {
        StringJudgement judged = settled()
                .jarChanges(7, 1.3)
                .surveyed("2021-07-10")
                .jarChanges(7, 1.55)
                .judged();
        assertThat(jar(judged, 7).urgency()).isEqualTo(Urgency.ACT);
        assertThat(judged.urgency()).isEqualTo(Urgency.ACT);
        assertThat(judged.headline()).startsWith("Act: jar 7 ");
        assertThat(judged.advice()).extracting(Advice::kind).contains(Advice.Kind.REPLACE_JARS);
    }

    @Test
    void oneOutlyingReadingAsksForAnotherReadingByADay() {
        StringJudgement judged = settled().jarChanges(7, 1.6).judged();
        assertThat(jar(judged, 7).urgency()).isEqualTo(Urgency.RECHECK);
        assertThat(judged.recheckBy()).isEqualTo(LocalDate.parse("2020-08-09"));
        assertThat(judged.advice()).extracting(Advice::kind).containsExactly(Advice.Kind.MEASURE_AGAIN);
    }

    @Test
    void aStepBelowTheLimitsAsksForAnotherReading() {
        StringJudgement judged = settled().jarChanges(7, 1.18).judged();
        assertThat(jar(judged, 7).urgency()).isEqualTo(Urgency.RECHECK);
        assertThat(reason(jar(judged, 7), Rule.JAR_STEP).words()).contains("+18 %");
        assertThat(judged.recheckBy()).isEqualTo(LocalDate.parse("2020-10-08"));
    }

    @Test
    void comingBackFromOneBadReadingIsNoStep() {
        StringJudgement judged =
                settled().jarChanges(7, 1.6).surveyed("2021-07-10").judged();
        assertThat(jar(judged, 7).urgency()).isEqualTo(Urgency.CLEAR);
    }

    @Test
    void anOffFloatSurveyAsksForAReReadAtMost() {
        StringJudgement judged = settled()
                .jarChanges(7, 1.3)
                .surveyed("2021-07-10")
                .jarChanges(7, 1.6)
                .offFloat()
                .judged();
        assertThat(jar(judged, 7).urgency()).isEqualTo(Urgency.RECHECK);
        assertThat(judged.doubts()).extracting(Doubt::kind).contains(Doubt.Kind.OFF_FLOAT);
    }

    @Test
    void aJarThatWasAlwaysHigherThanItsLotIsOnlyNoted() {
        StringJudgement judged = AString.of(24)
                .surveyed("2018-07-10")
                .jarChanges(7, 1.3)
                .surveyed("2019-07-10")
                .jarChanges(7, 1.3)
                .judged();
        assertThat(jar(judged, 7).urgency()).isEqualTo(Urgency.CLEAR);
        assertThat(reason(jar(judged, 7), Rule.JAR_OVER_LOT).words()).contains("so since its baseline");
        assertThat(jar(judged, 7).changeOnMedian()).isCloseTo(0.3, within(0.03));
        assertThat(jar(judged, 7).robustZ()).isGreaterThan(4);
    }

    /** A reading that fell with low volts: the pattern of a short (common practice, no source). */
    @Test
    void fallenOhmicValueAndLowVoltsInTwoSurveysAskForAction() {
        StringJudgement judged = settled()
                .jarChanges(5, 0.75)
                .jarFloatsAt(5, 2.10)
                .surveyed("2021-07-10")
                .jarChanges(5, 0.7)
                .jarFloatsAt(5, 2.05)
                .judged();
        assertThat(jar(judged, 5).urgency()).isEqualTo(Urgency.ACT);
        assertThat(reason(jar(judged, 5), Rule.JAR_UNDER_BASELINE).words()).contains("short");
    }

    /** 2.13 V act and 2.07 V floor for vented cells of 1.215 gravity: from memory. */
    @Test
    void aVentedCellBelowTheFloorTwiceAsksForAction() {
        AString vented = AString.of(24).ofTechnology(Technology.VENTED_LEAD_ACID, 2.20);
        StringJudgement judged = vented.surveyed("2018-07-10")
                .surveyed("2019-07-10")
                .jarFloatsAt(3, 2.12)
                .surveyed("2020-07-10")
                .jarFloatsAt(3, 2.06)
                .judged();
        assertThat(reason(jar(judged, 3), Rule.JAR_VOLTS_LOW).asks()).isEqualTo(Urgency.ACT);
        assertThat(reason(jar(judged, 3), Rule.JAR_VOLTS_LOW).words()).contains("from memory");
    }

    @Test
    void theVentedFloorDoesNotHoldForValveRegulatedCells() {
        StringJudgement judged = settled().jarFloatsAt(3, 2.12).judged();
        assertThat(jar(judged, 3).reasons()).extracting(Reason::rule).doesNotContain(Rule.JAR_VOLTS_LOW);
    }

    @Test
    void aHotJarAsksForAction() {
        StringJudgement judged = settled().jarIsAt(9, 36).judged();
        assertThat(jar(judged, 9).urgency()).isEqualTo(Urgency.ACT);
        assertThat(judged.reasons()).extracting(Reason::rule).contains(Rule.STRING_TEMPERATURE_SPREAD);
    }

    @Test
    void aSkippedJarIsToBeRead() {
        StringJudgement judged = settled().jarReads(17, Double.NaN).judged();
        assertThat(jar(judged, 17).urgency()).isEqualTo(Urgency.RECHECK);
        assertThat(jar(judged, 17).readOn()).isEqualTo(LocalDate.parse("2019-07-10"));
        assertThat(judged.headline()).contains("jar 17", "not read in the last survey");
    }

    /** Conductance falls as a jar ages; its trend is that of the reciprocal: 1000 S to 625 S is +60 %. */
    @Test
    void fallingConductanceIsARiseOfItsReciprocal() {
        AString string = AString.of(24);
        for (String day : new String[] {"2018-07-10", "2019-07-10", "2020-07-10", "2021-07-10"}) {
            string.surveyed(day).inKind(OhmicKind.CONDUCTANCE).everyJarChanges(2500);
        }
        StringJudgement judged =
                string.jarReads(7, 625).judged(Limits.standard().with(Limit.TREND_LEAST, 2));
        JarJudgement jar = jar(judged, 7);
        double baseline = 1000 * (1 + 0.01 * (6 * 7 % 5 - 2));
        assertThat(jar.changeOnBaseline()).isCloseTo(baseline / 625 - 1, within(1e-9));
        assertThat(reason(jar, Rule.JAR_OVER_BASELINE).words())
                .contains(" S ", "as a reciprocal")
                .doesNotContain("Ω");
        // half more burden than that of 1000 S are 1000/1.5 S
        assertThat(reason(jar, Rule.JAR_OVER_BASELINE).wouldChange()).startsWith("A reading above 667 S (+50 %)");
        assertThat(judged.figures().totalJarMilliohms()).isNull();
    }

    /** A straight line has its own slope, whatever the method: +5 % of baseline a year. */
    @Test
    void aStraightRiseHasItsOwnTrend() {
        AString string = AString.of(6).inServiceSince("2014-01-10");
        for (int year = 0; year < 6; year++) {
            string.surveyed((2015 + year) + "-07-10").jarReads(3, 0.4 * (1 + 0.05 * year));
        }
        Trend trend = jar(string.judged(), 3).trend();
        assertThat(trend).isNotNull();
        assertThat(trend.perYear()).isCloseTo(0.05, within(0.0005));
        assertThat(trend.lowPerYear()).isCloseTo(0.05, within(0.0005));
        assertThat(trend.readings()).isEqualTo(6);
    }

    @Test
    void aSkippedJarThatWasReadByItselfSinceIsRead() {
        AString string =
                settled().jarReads(17, Double.NaN).surveyed("2020-08-10").onlyJarReads(17, 0.4);
        JarJudgement jar = jar(string.judged(), 17);
        assertThat(jar.urgency()).isEqualTo(Urgency.CLEAR);
        assertThat(jar.reasons()).isEmpty();
        assertThat(jar(string.judged(), 16).reasons()).isEmpty();
    }

    @Test
    void aJarPutInIsNotDueUntilTheNextRoundAndReadOnceItIs() {
        AString string = settled().withJar(17, "2020-08-01", null, Double.NaN);
        JarJudgement fresh = jar(string.judged(), 17);
        assertThat(reason(fresh, Rule.JAR_NOT_READ).asks()).isEqualTo(Urgency.CLEAR);
        assertThat(reason(fresh, Rule.JAR_NOT_READ).words()).isEqualTo("Not read yet; sitting since 2020-08-01.");
        string.surveyed("2020-08-10").onlyJarReads(17, 0.4);
        assertThat(jar(string.judged(), 17).reasons()).isEmpty();
        string.surveyed("2021-07-10").jarReads(17, Double.NaN);
        assertThat(reason(jar(string.judged(), 17), Rule.JAR_NOT_READ).asks()).isEqualTo(Urgency.RECHECK);
    }

    @Test
    void aJarThatNoRoundEverReadIsSaidToHaveNeverBeenRead() {
        AString string = AString.of(6).surveyed("2018-07-10").jarReads(4, Double.NaN);
        Reason reason = reason(jar(string.judged(), 4), Rule.JAR_NOT_READ);
        assertThat(reason.asks()).isEqualTo(Urgency.RECHECK);
        assertThat(reason.words()).isEqualTo("Has never been read.");
    }

    /** A round reads half of the jars or more; what reads fewer tells nothing of the others. */
    @Test
    void aSurveyOfHalfOfTheJarsIsARoundAndOneOfFewerIsNot() {
        AString half = AString.of(6).surveyed("2018-07-10");
        half.jarReads(4, Double.NaN).jarReads(5, 0).jarReads(6, Double.NaN);
        assertThat(jar(half.judged(), 5).urgency()).isEqualTo(Urgency.RECHECK);
        AString fewer = half.jarReads(3, 0);
        assertThat(jar(fewer.judged(), 5).urgency()).isEqualTo(Urgency.CLEAR);
        assertThat(jar(fewer.judged(), 5).reasons()).extracting(Reason::rule).containsOnly(Rule.JAR_NOT_READ);
    }

    @Test
    void whereNoJarSitsNothingIsAsked() {
        AString string = AString.of(6)
                .withJar(3, "2018-01-10", "2019-01-01", Double.NaN)
                .surveyed("2018-07-10")
                .surveyed("2019-07-10")
                .jarReads(3, Double.NaN);
        JarJudgement jar = jar(string.judged(), 3);
        assertThat(jar.urgency()).isEqualTo(Urgency.CLEAR);
        assertThat(jar.reasons()).extracting(Reason::words).containsExactly("No jar sits here.");
    }

    @Test
    void theMostUrgentReasonStandsFirst() {
        JarJudgement jar = jar(
                settled()
                        .jarChanges(7, 1.2)
                        .surveyed("2021-07-10")
                        .jarChanges(7, 1.22)
                        .jarIsAt(7, 36)
                        .judged(),
                7);
        assertThat(jar.reasons())
                .extracting(Reason::rule)
                .startsWith(Rule.JAR_HOT)
                .contains(Rule.JAR_OVER_BASELINE);
        assertThat(jar.reasons()).extracting(Reason::asks).isSortedAccordingTo(Comparator.reverseOrder());
    }

    @Test
    void aHotJarIsFoundInAFirstSurveyToo() {
        StringJudgement judged =
                AString.of(6).surveyed("2018-07-10").jarIsAt(1, 36).judged();
        assertThat(jar(judged, 1).urgency()).isEqualTo(Urgency.ACT);
        assertThat(jar(judged, 1).celsius()).isEqualTo(36);
    }

    /** From four readings on. */
    @Test
    void aTrendNeedsFourReadings() {
        AString string =
                AString.of(6).surveyed("2018-07-10").surveyed("2019-07-10").surveyed("2020-07-10");
        assertThat(jar(string.judged(), 3).trend()).isNull();
        assertThat(jar(string.surveyed("2021-07-10").judged(), 3).trend().readings())
                .isEqualTo(4);
    }

    /** Each survey has a median of its own: 12 % over .40, then 22 % over .50. */
    @Test
    void aReadingIsHeldAgainstTheLotInItsOwnSurvey() {
        AString string =
                AString.of(24).surveyed("2018-07-10").everyJarReads(0.4).jarReads(7, 0.45);
        string.surveyed("2019-07-10").everyJarReads(0.5).jarReads(7, 0.61);
        assertThat(reason(jar(string.judged(), 7), Rule.JAR_OVER_LOT).asks()).isEqualTo(Urgency.PLAN);
    }

    @Test
    void twoReadingsAreEnoughForAStepAndOneIsNot() {
        AString string = AString.of(24).surveyed("2018-07-10");
        assertThat(OhmicEvidence.of(new Panel(string.history(), Limits.standard()), 7, Limits.standard())
                        .step())
                .isNaN();
        string.surveyed("2019-07-10").jarChanges(7, 1.18);
        assertThat(reason(jar(string.judged(), 7), Rule.JAR_STEP).asks()).isEqualTo(Urgency.RECHECK);
    }

    /** The string moved by 20 and 30 %, the jar by as much as both together; between them it was misread. */
    @Test
    void comingBackIsNoStepEvenWhereTheStringMoves() {
        AString string = AString.of(24).surveyed("2018-07-10");
        string.surveyed("2019-07-10").everyJarChanges(1.2).jarReads(7, 0.9);
        string.surveyed("2020-07-10").everyJarChanges(1.56);
        assertThat(jar(string.judged(), 7).reasons()).extracting(Reason::rule).doesNotContain(Rule.JAR_STEP);
    }

    /** Over the last sixty: four early ones that stood twice as high are past. */
    @Test
    void aTrendRestsOnTheLastSixtyReadings() {
        AString string = AString.of(3).inServiceSince("2010-01-10");
        for (int month = 0; month < 64; month++) {
            double share = month < 4 ? 2 : 1 + 0.01 * month;
            string.surveyed(LocalDate.parse("2010-07-10").plusMonths(month).toString())
                    .jarReads(2, 0.4 * share)
                    .linkReads(2, 25 * share);
        }
        Trend ofJar = jar(string.judged(), 2).trend();
        assertThat(ofJar.readings()).isEqualTo(60);
        assertThat(ofJar.perYear()).isCloseTo(0.06, within(0.0005));
        Trend ofLink = string.judged().links().get(2).trend();
        assertThat(ofLink.readings()).isEqualTo(60);
        assertThat(ofLink.perYear()).isCloseTo(0.06, within(0.0005));
    }
}
