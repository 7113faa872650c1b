package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ohmstead.kernel.Conductor;
import org.ohmstead.kernel.Conductor.Flexibility;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;
import org.ohmstead.kernel.Urgency;

class JudgeTest {

    private static final String DAY = "2019-07-10";

    static Stream<AString> oddHistories() {
        AString thousand = AString.of(3).inServiceSince("2017-01-01");
        for (int day = 0; day < 1000; day++) {
            thousand.surveyed(LocalDate.parse("2017-06-01").plusDays(day).toString());
        }
        return Stream.of(
                AString.of(6),
                AString.of(1).surveyed(DAY),
                AString.of(6).surveyed(DAY),
                AString.of(6).surveyed(DAY).everythingMissing(),
                AString.of(6).surveyed("2018-07-10").surveyed(DAY).everythingMissing(),
                AString.of(6)
                        .surveyed("2018-07-10")
                        .jarReads(4, Double.NaN)
                        .surveyed(DAY)
                        .jarReads(4, Double.NaN),
                AString.of(6)
                        .surveyed(DAY)
                        .surveyed(DAY)
                        .surveyed(DAY)
                        .surveyed(DAY)
                        .surveyed(DAY),
                thousand,
                AString.of(6).surveyed("2018-07-10").surveyed(DAY).inKind(OhmicKind.CONDUCTANCE),
                AString.of(6)
                        .surveyed("2018-07-10")
                        .atCelsius(Double.NaN)
                        .surveyed(DAY)
                        .atCelsius(Double.NaN),
                AString.of(6).surveyed(DAY).everyJarChanges(0),
                AString.of(6).surveyed(DAY).everyJarChanges(-1).jarReads(2, Double.POSITIVE_INFINITY),
                AString.of(6).surveyed("2018-07-10").offFloat().surveyed(DAY).offFloat(),
                AString.of(6)
                        .withJar(3, "2018-01-10", "2018-09-01", Double.NaN)
                        .surveyed("2018-07-10")
                        .surveyed(DAY),
                AString.of(6)
                        .withJar(3, "2019-09-01", null, Double.NaN)
                        .surveyed("2018-07-10")
                        .surveyed(DAY),
                AString.of(6)
                        .carrying(200)
                        .withLink(3, LinkKind.ROW_CABLE, 2, new Conductor("77", Flexibility.CLASS_5, 2, 1))
                        .surveyed(DAY)
                        .linkReads(3, 0, 10)
                        .linkReads(2),
                AString.of(6)
                        .withLink(3, LinkKind.TIER_CABLE, 1, null)
                        .surveyed(DAY)
                        .linkReads(3, -5));
    }

    @ParameterizedTest
    @MethodSource("oddHistories")
    void anyHistoryIsJudgedInFiniteNumbersAndWords(AString string) {
        StringJudgement judged = string.judged();
        assertThat(judged.toString()).doesNotContain("NaN", "Infinity", "null µΩ");
        assertThat(judged.jars()).hasSize(string.history().plan().positions());
        assertThat(judged.links()).hasSize(string.history().plan().positions() + 1);
        assertThat(judged.headline()).isNotBlank();
        assertThat(judged.toString().toLowerCase()).doesNotContain("has capacity", "capacity is");
    }

    @Test
    void theSameHistoryGivesTheSameJudgement() {
        AString string = AString.of(24).surveyed("2018-07-10").surveyed(DAY).jarReads(3, 0.7);
        assertThat(string.judged()).isEqualTo(string.judged());
    }

    @Test
    void aStringWithoutASurveyAsksForOne() {
        StringJudgement judged = AString.of(6).inServiceSince("2020-02-01").judged();
        assertThat(judged.urgency()).isEqualTo(Urgency.RECHECK);
        assertThat(judged.asOf()).isEqualTo(LocalDate.parse("2020-02-01"));
        assertThat(judged.surveyId()).isNull();
        assertThat(judged.recheckBy()).isNull();
        assertThat(judged.headline()).isEqualTo("Recheck: Has not been surveyed yet: nothing can be said of it.");
    }

    @Test
    void aSurveyOfLinksAloneLeavesTheJarsAsLastRead() {
        AString string = AString.of(6).surveyed("2018-07-10").surveyed(DAY).surveyed("2020-07-10");
        for (int position = 1; position <= 6; position++) {
            string.jarReads(position, Double.NaN);
        }
        StringJudgement judged = string.judged();
        assertThat(judged.jars()).extracting(JarJudgement::readOn).containsOnly(LocalDate.parse(DAY));
        assertThat(judged.urgency()).isEqualTo(Urgency.CLEAR);
    }

    /** 5 A rms per 100 Ah of the 8 h rating: makers' manual RS-990 p. 18. The jars here have 100 Ah. */
    @Test
    void rippleOverFiveAmpsPerHundredAmpereHoursIsFound() {
        AString string = AString.of(6).surveyed("2018-07-10").withRipple(5).surveyed(DAY);
        assertThat(string.withRipple(5).judged().urgency()).isEqualTo(Urgency.CLEAR);
        StringJudgement judged = string.withRipple(5.1).judged();
        assertThat(judged.reasons()).extracting(Reason::rule).contains(Rule.STRING_RIPPLE);
        assertThat(judged.urgency()).isEqualTo(Urgency.PLAN);
        assertThat(judged.advice()).extracting(Advice::kind).contains(Advice.Kind.ADJUST_CHARGER);
    }

    /** 2.25 V at 25 °C asks for 2.22 V at 35 °C (published VRLA series manual, p. 19); ±50 mV is our own limit. */
    @Test
    void floatVoltageIsHeldAgainstTheCompensatedSetpoint() {
        AString string =
                AString.of(6).surveyed("2018-07-10").withStringVolts(6 * 2.28).atCelsius(35);
        StringJudgement judged = string.judged();
        assertThat(judged.figures().expectedFloatVoltsPerCell()).isCloseTo(2.22, within(1e-9));
        assertThat(judged.figures().floatVoltsPerCell()).isCloseTo(2.28, within(1e-9));
        assertThat(judged.reasons()).extracting(Reason::rule).contains(Rule.STRING_FLOAT);
    }

    @Test
    void aFloatVoltageAtTheSetpointIsClear() {
        StringJudgement judged = AString.of(6)
                .surveyed("2018-07-10")
                .withStringVolts(6 * 2.22)
                .atCelsius(35)
                .judged();
        assertThat(judged.reasons()).extracting(Reason::rule).doesNotContain(Rule.STRING_FLOAT);
    }

    /** Ohm's law: six jars of 0.4 mΩ and seven links of 25 µΩ at 100 A step by 257.5 mV. */
    @Test
    void theStepAtTheDesignCurrentIsEstimatedFromJarsAndLinks() {
        AString string = AString.of(6).carrying(100).surveyed("2018-07-10");
        for (int k = 0; k <= 6; k++) {
            string.linkReads(k, 25);
        }
        for (int position = 1; position <= 6; position++) {
            string.jarReads(position, 0.4);
        }
        StringFigures figures = string.judged().figures();
        assertThat(figures.totalJarMilliohms()).isCloseTo(2.4, within(1e-9));
        assertThat(figures.totalLinkMicroohms()).isCloseTo(175, within(1e-9));
        assertThat(figures.voltageStepVolts()).isCloseTo(0.2575, within(1e-9));
    }

    /** Ten years at 35 °C, halving per 15 °F: 0.435 (makers' manual RS-1476 p. 20, computed) leaves 4.35 years. */
    @Test
    void aHotRoomShortensTheExpectedLife() {
        StringJudgement judged = AString.of(6)
                .inServiceSince("2014-07-10")
                .designedForYears(10)
                .surveyed("2018-07-10")
                .atCelsius(35)
                .judged();
        assertThat(judged.figures().expectedYears()).isCloseTo(4.35, within(0.005));
        assertThat(judged.figures().lifeUsed()).isCloseTo(4 / 4.35, within(0.005));
        assertThat(judged.advice()).extracting(Advice::kind).contains(Advice.Kind.TEST_CAPACITY);
        assertThat(ServiceLife.expectedYears(
                        AString.of(6)
                                .ofTechnology(Technology.NICKEL_CADMIUM, 1.41)
                                .designedForYears(20)
                                .history()
                                .plan()
                                .jarType(),
                        35,
                        8.33))
                .isEqualTo(20);
    }

    @Test
    void aStringThatRisesAsAWholeAsksForACapacityTest() {
        AString string = AString.of(24);
        string.surveyed("2018-07-10").surveyed(DAY).everyJarChanges(1.15);
        StringJudgement judged =
                string.surveyed("2020-07-10").everyJarChanges(1.22).judged();
        assertThat(judged.urgency()).isEqualTo(Urgency.PLAN);
        assertThat(judged.figures().shareNearLimit()).isEqualTo(1);
        assertThat(judged.advice()).extracting(Advice::kind).contains(Advice.Kind.TEST_CAPACITY);
    }

    @Test
    void aJumpOfTheWholeStringIsDoubted() {
        StringJudgement judged = AString.of(24)
                .surveyed("2018-07-10")
                .surveyed(DAY)
                .everyJarChanges(1.12)
                .judged();
        assertThat(judged.doubts()).extracting(Doubt::kind).contains(Doubt.Kind.SURVEY_SHIFT);
        assertThat(judged.urgency()).isEqualTo(Urgency.CLEAR);
    }

    @Test
    void aJudgementOfALargeStringNamesEveryUnitInOrder() {
        StringJudgement judged =
                AString.of(240).surveyed("2018-07-10").surveyed(DAY).judged();
        int[] positions =
                judged.jars().stream().mapToInt(JarJudgement::position).toArray();
        assertThat(positions).isSorted().hasSize(240);
        assertThat(Arrays.stream(positions).min()).hasValue(1);
    }
}
