package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmstead.assessment.model.Doubt.Kind;
import org.ohmstead.kernel.LinkKind;

class DoubtsTest {

    private static final double NAN = Double.NaN;

    private static List<Kind> kinds(StringJudgement judged) {
        return judged.doubts().stream().map(Doubt::kind).toList();
    }

    private static String words(StringJudgement judged, Kind kind) {
        return judged.doubts().stream()
                .filter(doubt -> doubt.kind() == kind)
                .map(Doubt::words)
                .findFirst()
                .orElse("");
    }

    private static AString twice() {
        return AString.of(6).surveyed("2018-07-10").surveyed("2019-07-10");
    }

    @Test
    void aStringReadAsUsualIsNotDoubted() {
        assertThat(kinds(twice().judged())).isEmpty();
    }

    @Test
    void aStringWithoutASurveySaysSo() {
        assertThat(AString.of(6).judged().doubts()).containsExactly(new Doubt(Kind.NO_SURVEY, "There is no survey."));
    }

    @Test
    void anUnknownTemperatureIsSaid() {
        assertThat(kinds(twice().atCelsius(NAN).judged())).containsExactly(Kind.TEMPERATURE_UNKNOWN);
    }

    @Test
    void aTemperatureOffTheBaselineSurveyIsSaidWithItsDirection() {
        assertThat(words(twice().atCelsius(31).judged(), Kind.TEMPERATURE_OFF_BASELINE))
                .isEqualTo("Taken 6.0 K warmer than the baseline survey, uncorrected.");
        assertThat(words(twice().withCoefficient(-0.01).atCelsius(18.5).judged(), Kind.TEMPERATURE_OFF_BASELINE))
                .isEqualTo("Taken 6.5 K colder than the baseline survey;"
                        + " referred to 25 °C by the jar type's coefficient.");
    }

    /** A joint move of more than 8 %, up or down. */
    @ParameterizedTest
    @CsvSource({"1.081, true", "1.079, false", "0.919, true", "0.921, false"})
    void aJointMoveOfTheWholeStringIsSaid(double factor, boolean said) {
        assertThat(kinds(twice().everyJarChanges(factor).judged()).contains(Kind.SURVEY_SHIFT))
                .isEqualTo(said);
    }

    @Test
    void aFirstSurveyHasNoBaselineToCompareWith() {
        StringJudgement judged = AString.of(6).surveyed("2018-07-10").judged();
        assertThat(words(judged, Kind.BASELINE_MISSING)).isEqualTo("No baseline to compare with for every jar.");
        StringJudgement one = twice().withJar(4, "2019-01-10", null, NAN).judged();
        assertThat(words(one, Kind.BASELINE_MISSING)).isEqualTo("No baseline to compare with for jar 4.");
    }

    /** Later than two years after the start, which ended on 10 January 2020. */
    @ParameterizedTest
    @CsvSource({"2020-01-10, false", "2020-01-11, true"})
    void aBaselineTakenMoreThanTwoYearsAfterTheStartIsLate(String first, boolean late) {
        StringJudgement judged =
                AString.of(6).surveyed(first).surveyed("2021-07-10").judged();
        assertThat(kinds(judged).contains(Kind.BASELINE_LATE)).isEqualTo(late);
    }

    /** By a fifth or more, up or down: 0.5 mΩ against 0.625 mΩ is a quarter, exactly. */
    @ParameterizedTest
    @CsvSource({"0.625, 0.25, true", "0.625, 0.251, false", "0.375, 0.25, true", "0.375, 0.251, false"})
    void aReferenceThatTheMedianJarStandsFarFromIsUnfit(double reading, double limit, boolean unfit) {
        StringJudgement judged = AString.of(6)
                .withReference(0.5)
                .surveyed("2019-07-10")
                .everyJarReads(reading)
                .judged(Limits.standard().with(Limit.JAR_RISE_NOTE, limit));
        assertThat(kinds(judged).contains(Kind.REFERENCE_UNFIT)).isEqualTo(unfit);
    }

    @Test
    void sixJarsAreNamedAndMoreAreCounted() {
        AString string = AString.of(12).surveyed("2018-07-10").surveyed("2019-07-10");
        for (int position = 1; position <= 6; position++) {
            string.withJar(position, "2019-01-10", null, NAN);
        }
        assertThat(words(string.judged(), Kind.BASELINE_MISSING)).endsWith("for jar 1, 2, 3, 4, 5, 6.");
        string.withJar(7, "2019-01-10", null, NAN).withJar(8, "2019-01-10", null, NAN);
        assertThat(words(string.judged(), Kind.BASELINE_MISSING)).endsWith("for jar 1, 2, 3, 4, 5, 6 and 2 more.");
    }

    /** An instrument or a temperature counts as another one beside the survey that most baselines come from. */
    @Test
    void instrumentAndTemperatureAreThoseOfTheBaselinesSurvey() {
        AString string =
                AString.of(6).surveyed("2018-02-01").withInstrument("TS-9").atCelsius(12);
        string.surveyed("2018-07-10").surveyed("2019-07-10");
        assertThat(kinds(string.judged())).isEmpty();
        StringJudgement other = string.withInstrument("TS-9").atCelsius(12).judged();
        assertThat(kinds(other)).containsExactly(Kind.OTHER_INSTRUMENT, Kind.TEMPERATURE_OFF_BASELINE);
        assertThat(words(other, Kind.OTHER_INSTRUMENT))
                .startsWith("Read with instrument TS-9, the baseline with TS-1:");
    }

    @Test
    void aReferenceIsHeldAgainstTheJarsThatRestOnItOnly() {
        AString string = AString.of(6).withReference(0.4).withJar(6, "2019-01-10", null, NAN);
        string.surveyed("2018-07-10").everyJarReads(0.4);
        string.surveyed("2019-07-10").everyJarReads(0.52).jarReads(6, 0.4);
        assertThat(kinds(string.judged())).contains(Kind.BASELINE_PROVISIONAL).doesNotContain(Kind.REFERENCE_UNFIT);
    }

    @Test
    void linksAreNamed() {
        StringJudgement judged = AString.of(6)
                .withLink(3, LinkKind.STRAP, 2, null)
                .surveyed("2018-07-10")
                .linkReads(3, 40, NAN)
                .judged();
        assertThat(words(judged, Kind.STRAPS_MISSING)).isEqualTo("Not every strap was read of link 3.");
    }

    /** A quarter exactly is no more than a quarter. */
    @ParameterizedTest
    @CsvSource({"0.25, false", "0.249, true"})
    void aJointMoveMustExceedItsLimit(double limit, boolean said) {
        AString string = AString.of(6).surveyed("2018-07-10").everyJarReads(0.5);
        string.surveyed("2019-07-10").everyJarReads(0.625);
        assertThat(kinds(string.judged(Limits.standard().with(Limit.SURVEY_SHIFT, limit)))
                        .contains(Kind.SURVEY_SHIFT))
                .isEqualTo(said);
    }
}
