package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.assessment.model.Baseline.Origin;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Urgency;

class JarBaselineTest {

    private static JarJudgement jar(AString string, int position) {
        return string.judged().jars().get(position - 1);
    }

    /** About six months after the initial charge: makers' manual 92.30 §9.7. */
    @Test
    void theFirstSurveyAfterSettlingIsTheBaseline() {
        JarJudgement jar = jar(
                AString.of(6)
                        .inServiceSince("2018-01-10")
                        .surveyed("2018-02-01")
                        .surveyed("2018-07-10")
                        .surveyed("2019-07-10"),
                1);
        assertThat(jar.baseline()).isEqualTo(new Baseline(0.4 * 0.98, Origin.SURVEY, LocalDate.parse("2018-07-10")));
    }

    @Test
    void anEarlierSurveyServesProvisionally() {
        AString string = AString.of(6)
                .inServiceSince("2018-01-10")
                .surveyed("2018-02-01")
                .surveyed("2018-04-01");
        assertThat(jar(string, 1).baseline().origin()).isEqualTo(Origin.PROVISIONAL);
        assertThat(string.judged().doubts()).extracting(Doubt::kind).contains(Doubt.Kind.BASELINE_PROVISIONAL);
    }

    @Test
    void anEnteredBaselineGoesFirst() {
        JarJudgement jar = jar(
                AString.of(6)
                        .withJar(2, "2018-01-10", null, 0.35)
                        .surveyed("2018-07-10")
                        .surveyed("2019-07-10")
                        .jarReads(2, 0.42),
                2);
        assertThat(jar.baseline()).isEqualTo(new Baseline(0.35, Origin.ENTERED, null));
        assertThat(jar.changeOnBaseline()).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void theJarTypesReferenceServesAFirstSurvey() {
        JarJudgement jar =
                jar(AString.of(6).withReference(0.4).surveyed("2019-07-10").jarReads(3, 0.44), 3);
        assertThat(jar.baseline().origin()).isEqualTo(Origin.JAR_TYPE);
        assertThat(jar.changeOnBaseline()).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void aFirstSurveyIsNeverItsOwnBaseline() {
        JarJudgement jar = jar(AString.of(6).surveyed("2019-07-10"), 3);
        assertThat(jar.baseline()).isNull();
        assertThat(jar.changeOnBaseline()).isNull();
        assertThat(jar.changeOnMedian()).isNotNull();
    }

    @Test
    void aReferenceThatFitsNoJarOfTheStringIsDoubtedInsteadOfTheJars() {
        StringJudgement judged =
                AString.of(24).withReference(0.25).surveyed("2019-07-10").judged();
        assertThat(judged.urgency()).isEqualTo(Urgency.CLEAR);
        assertThat(judged.doubts()).extracting(Doubt::kind).contains(Doubt.Kind.REFERENCE_UNFIT);
    }

    @Test
    void aReplacedJarStartsAnew() {
        JarJudgement jar = jar(
                AString.of(6)
                        .withJar(2, "2018-01-10", "2020-03-01", Double.NaN)
                        .withJar(2, "2020-03-01", null, Double.NaN)
                        .surveyed("2018-07-10")
                        .surveyed("2019-07-10")
                        .jarReads(2, 0.7)
                        .surveyed("2020-09-10")
                        .surveyed("2021-09-10"),
                2);
        assertThat(jar.baseline().takenOn()).isEqualTo(LocalDate.parse("2020-09-10"));
        assertThat(jar.changeOnBaseline()).isCloseTo(0, within(1e-9));
        assertThat(jar.urgency()).isEqualTo(Urgency.CLEAR);
    }

    @Test
    void aReplacedJarIsNotComparedWithTheOldLot() {
        StringJudgement judged = AString.of(24)
                .withJar(2, "2020-03-01", null, Double.NaN)
                .surveyed("2018-07-10")
                .surveyed("2020-07-10")
                .jarReads(2, 0.25)
                .judged();
        assertThat(judged.jars().get(1).changeOnMedian()).isNull();
        assertThat(judged.jars().get(2).changeOnMedian()).isNotNull();
    }

    @Test
    void anotherOhmicKindIsNotComparable() {
        StringJudgement judged = AString.of(6)
                .surveyed("2018-07-10")
                .surveyed("2019-07-10")
                .inKind(OhmicKind.RESISTANCE)
                .judged();
        assertThat(judged.jars().get(0).changeOnBaseline()).isNull();
        assertThat(judged.doubts()).extracting(Doubt::kind).contains(Doubt.Kind.OTHER_OHMIC_KIND);
    }

    @Test
    void anotherInstrumentIsDoubted() {
        StringJudgement judged = AString.of(6)
                .surveyed("2018-07-10")
                .surveyed("2019-07-10")
                .withInstrument("TS-2")
                .judged();
        assertThat(judged.doubts())
                .anySatisfy(doubt -> assertThat(doubt.words()).contains("TS-1", "TS-2"));
    }

    /** Ohmic values move 0.5 to 1 % per K (from memory): 6 K are worth a mark, 5 K are not. */
    @Test
    void aSurveyMoreThanFiveKelvinOffItsBaselineIsMarked() {
        AString string = AString.of(6).surveyed("2018-07-10").surveyed("2019-07-10");
        assertThat(string.atCelsius(19).judged().doubts())
                .extracting(Doubt::kind)
                .contains(Doubt.Kind.TEMPERATURE_OFF_BASELINE);
        assertThat(string.atCelsius(20).judged().doubts())
                .extracting(Doubt::kind)
                .doesNotContain(Doubt.Kind.TEMPERATURE_OFF_BASELINE);
    }

    @Test
    void anEnteredCoefficientRefersReadingsToTwentyFiveDegrees() {
        JarJudgement jar = jar(
                AString.of(6)
                        .withCoefficient(-0.01)
                        .surveyed("2018-07-10")
                        .jarReads(3, 0.4)
                        .surveyed("2019-07-10")
                        .jarReads(3, 0.44)
                        .atCelsius(15),
                3);
        assertThat(jar.changeOnBaseline()).isCloseTo(0, within(1e-9));
        assertThat(jar.ohmic()).isEqualTo(0.44);
    }

    /** An entered value carries no kind of its own. */
    @Test
    void anEnteredBaselineIsOfTheKindTheJarWasFirstSurveyedWith() {
        AString before = AString.of(6)
                .inServiceSince("2016-01-10")
                .withJar(2, "2018-01-10", null, 0.35)
                .surveyed("2016-07-10")
                .inKind(OhmicKind.RESISTANCE)
                .surveyed("2018-07-10")
                .surveyed("2019-07-10");
        assertThat(jar(before, 2).baseline().origin()).isEqualTo(Origin.ENTERED);
        AString always = AString.of(6)
                .withJar(2, "2018-01-10", null, 0.35)
                .surveyed("2018-07-10")
                .inKind(OhmicKind.RESISTANCE)
                .surveyed("2019-07-10")
                .inKind(OhmicKind.RESISTANCE);
        assertThat(jar(always, 2).baseline().origin()).isEqualTo(Origin.ENTERED);
        AString later = always.surveyed("2020-07-10");
        assertThat(jar(later, 2).baseline()).isNull();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, 0})
    void aSurveyThatLeftTheJarOutSaysNothingOfAnEnteredBaselinesKind(double notRead) {
        AString string = AString.of(6)
                .withJar(2, "2018-01-10", null, 0.35)
                .surveyed("2018-07-10")
                .inKind(OhmicKind.RESISTANCE)
                .jarReads(2, notRead)
                .surveyed("2019-07-10")
                .surveyed("2020-07-10");
        assertThat(jar(string, 2).baseline().origin()).isEqualTo(Origin.ENTERED);
    }

    @Test
    void zeroIsNoBaselineAndNoReference() {
        AString string =
                AString.of(6).withReference(0).withJar(2, "2018-01-10", null, 0).surveyed("2018-07-10");
        assertThat(jar(string, 2).baseline()).isNull();
        assertThat(jar(string.surveyed("2019-07-10"), 2).baseline().origin()).isEqualTo(Origin.SURVEY);
    }

    @Test
    void aReferenceOfAnotherKindIsNoBaseline() {
        AString string = AString.of(6).withReference(0.4).surveyed("2019-07-10").inKind(OhmicKind.RESISTANCE);
        assertThat(jar(string, 3).baseline()).isNull();
    }

    @Test
    void aSurveyOffFloatIsNeverABaseline() {
        AString string = AString.of(6)
                .surveyed("2018-07-10")
                .offFloat()
                .jarReads(3, 0.6)
                .surveyed("2019-07-10")
                .surveyed("2020-07-10");
        assertThat(jar(string, 3).baseline().takenOn()).isEqualTo(LocalDate.parse("2019-07-10"));
    }

    /** Five months from 10 January end on 10 June. */
    @Test
    void fiveMonthsAfterItsStartAJarHasSettled() {
        AString settled =
                AString.of(6).surveyed("2018-06-09").surveyed("2018-06-10").surveyed("2019-07-10");
        assertThat(jar(settled, 1).baseline().takenOn()).isEqualTo(LocalDate.parse("2018-06-10"));
        AString early = AString.of(6).surveyed("2018-06-09").surveyed("2019-07-10");
        assertThat(jar(early, 1).baseline().origin()).isEqualTo(Origin.PROVISIONAL);
    }

    /** What started within 183 days is one lot, and a lot has five jars or more. */
    @ParameterizedTest
    @CsvSource({"2018-07-12, true", "2018-07-13, false"})
    void aLotIsWhatStartedWithinHalfAYear(String start, boolean ofOneLot) {
        AString string = AString.of(5).withJar(5, start, null, Double.NaN).surveyed("2020-07-10");
        assertThat(jar(string, 5).changeOnMedian() != null).isEqualTo(ofOneLot);
        assertThat(jar(string, 1).changeOnMedian() != null).isEqualTo(ofOneLot);
    }

    @Test
    void aJarRecordedWhereTheStringHasNoPositionIsLeftOut() {
        AString string = AString.of(6)
                .withJar(0, "2018-01-10", null, 0.35)
                .withJar(7, "2018-01-10", null, 0.35)
                .surveyed("2018-07-10")
                .surveyed("2019-07-10");
        assertThat(string.judged().jars()).hasSize(6);
        assertThat(jar(string, 6).baseline().origin()).isEqualTo(Origin.SURVEY);
    }

    /** A jar's own temperature, else that of the survey's median jar: 10 K colder reads 10 % more here. */
    @Test
    void aJarWithoutATemperatureIsReferredByThatOfTheOthers() {
        AString string =
                AString.of(6).withCoefficient(-0.01).surveyed("2018-07-10").jarReads(3, 0.4);
        string.surveyed("2019-07-10").atCelsius(15).jarReads(3, 0.44).jarIsAt(3, Double.NaN);
        assertThat(jar(string, 3).changeOnBaseline()).isCloseTo(0, within(1e-9));
        assertThat(jar(string.jarIsAt(3, 25), 3).changeOnBaseline()).isCloseTo(0.1, within(1e-9));
    }
}
