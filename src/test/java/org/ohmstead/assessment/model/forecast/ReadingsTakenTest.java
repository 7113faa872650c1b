package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.assessment.model.JarTypeFacts;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.kernel.OhmicKind;

/** How a survey's values become what the filter takes in. */
class ReadingsTakenTest {

    private static final double NAN = Double.NaN;
    private static final LocalDate DAY = LocalDate.of(2019, 5, 4);

    /** Five jars of 0.400 mΩ at 25 °C and 2.25 V, six links of 25 µΩ. */
    private static final class Survey {

        private final double[] ohmic = {.4, .4, .4, .4, .4};
        private final double[] volts = {2.25, 2.25, 2.25, 2.25, 2.25};
        private final double[] celsius = {25, 25, 25, 25, 25};
        private double[][] links = {{25}, {25}, {25}, {25}, {25}, {25}};
        private OhmicKind kind = OhmicKind.IMPEDANCE;
        private @Nullable String instrument = "A-1";
        private double ambient = 25;
        private boolean onFloat = true;
        private LocalDate day = DAY;
        private double perKelvin = NAN;

        double[] jars() {
            return LogReadings.ofJars(
                    StringOf.jars(5).withTemperatureCoefficient(perKelvin).plan(), done());
        }

        double[] linkLogs() {
            return LogReadings.ofLinks(StringOf.jars(5).plan(), done());
        }

        SurveyReadings done() {
            return new SurveyReadings(
                    1,
                    day.atTime(9, 0).toInstant(ZoneOffset.UTC),
                    day,
                    kind,
                    instrument,
                    ambient,
                    11.25,
                    NAN,
                    onFloat,
                    ohmic,
                    volts,
                    celsius,
                    links);
        }
    }

    private static void is(double[] logs, double... values) {
        double[] expected = Arrays.stream(values).map(Math::log).toArray();
        assertThat(logs).containsExactly(expected, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void whatCannotBeAReadingIsMissing(double value) {
        Survey survey = new Survey();
        survey.ohmic[2] = value;
        is(survey.jars(), .4, .4, NAN, .4, .4);
        assertThat(LogReadings.log(value)).isNaN();
        assertThat(LogReadings.log(Double.MIN_VALUE)).isFinite();
    }

    @Test
    void conductanceIsTakenAsItsReciprocal() {
        Survey survey = new Survey();
        survey.kind = OhmicKind.CONDUCTANCE;
        Arrays.fill(survey.ohmic, 2500);
        is(survey.jars(), 1 / 2500.0, 1 / 2500.0, 1 / 2500.0, 1 / 2500.0, 1 / 2500.0);
    }

    /** One and a half per cent less per kelvin: at 35 °C a reading of .340 is .400 at 25 °C. */
    @Test
    void aJarIsReferredTo25DegreesByItsOwnTemperatureElseTheMiddleJarsElseTheRooms() {
        Survey survey = new Survey();
        survey.perKelvin = -.015;
        survey.ambient = 15;
        survey.celsius[0] = 35;
        survey.ohmic[0] = .34;
        survey.celsius[1] = NAN;
        is(survey.jars(), .4, .4, .4, .4, .4);
        Arrays.fill(survey.celsius, NAN);
        Arrays.fill(survey.ohmic, .46);
        is(survey.jars(), .4, .4, .4, .4, .4);
        survey.ambient = NAN;
        is(survey.jars(), .46, .46, .46, .46, .46);
    }

    /** Less than three tenths or more than three times the value is no matter of temperature. */
    @ParameterizedTest
    @CsvSource({"-.02, 61, .28, false", "-.02, 59, .32, true", ".02, 126, 3.02, false", ".02, 124, 2.98, true"})
    void anAbsurdCorrectionIsNotMade(double perKelvin, double celsius, double factor, boolean corrected) {
        Survey survey = new Survey();
        survey.perKelvin = perKelvin;
        Arrays.fill(survey.celsius, celsius);
        double[] logs = survey.jars();
        assertThat(logs[0]).isCloseTo(Math.log(corrected ? .4 / factor : .4), within(1e-12));
    }

    /** Within a fifth of a decade, 58 %, of a power of ten beside the string's median. */
    @ParameterizedTest
    @CsvSource({
        "4.1, .41",
        ".0041, .41",
        "410, .41",
        "1.0, 1.0",
        ".1, .1",
        "6.33, .633",
        "6.35, 6.35",
        "2.53, .253",
        "2.52, 2.52"
    })
    void aSlippedPointOfAJarIsPutBack(double read, double taken) {
        Survey survey = new Survey();
        survey.ohmic[3] = read;
        is(survey.jars(), .4, .4, .4, taken, .4);
    }

    /** A loose joint may read ten or a hundred times as much; a thousand times is a slip, and so is every tenth. */
    @ParameterizedTest
    @CsvSource({"260, 260", "2600, 2600", "26000, 26", "2.6, 26", ".26, 26"})
    void aSlippedPointOfALinkIsPutBackOnlyWhereNoJointReadsSo(double read, double taken) {
        Survey survey = new Survey();
        survey.links[3] = new double[] {read};
        is(survey.linkLogs(), 25, 25, 25, taken, 25, 25);
    }

    /** Straps side by side, as if all were like those read: two of 24 µΩ together are 48 µΩ each. */
    @Test
    void strapsAreTakenTogetherAndLinksNotRecordedAreMissing() {
        Survey survey = new Survey();
        survey.links = new double[][] {{40, 60}, {40, NAN}, {0, 40}, {}};
        is(survey.linkLogs(), 48, 40, 40, NAN, NAN, NAN);
    }

    /** A whole survey in another unit, against what is expected of its middle. */
    @ParameterizedTest
    @CsvSource({"400, .4", ".0004, .4", "4.1, .41", ".44, .44", "1.2, 1.2", ".4, .4"})
    void aSurveyInAnotherUnitIsPutBack(double read, double taken) {
        double[] logs = new double[5];
        Arrays.fill(logs, Math.log(read));
        LogReadings.undoSurveySlip(logs, Math.log(.4));
        is(logs, taken, taken, taken, taken, taken);
    }

    @Test
    void aSurveyInAnotherUnitMovesNoForecast() {
        double[] rise = new double[2];
        for (int unit = 0; unit < 2; unit++) {
            double factor = unit == 0 ? 1 : 1000;
            StringOf string = StringOf.jars(12).surveyedOn(DAY).surveyedOn(DAY.plusDays(182));
            string.surveyedOn(DAY.plusDays(364), (ohmic, volts, links) -> Arrays.setAll(ohmic, i -> factor * ohmic[i]));
            rise[unit] = string.forecast().commonRise();
        }
        assertThat(rise[1]).isCloseTo(rise[0], within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"2.25, 2.25", "0, NaN", "-1, NaN", "999, 999", "1000, NaN", "NaN, NaN"})
    void voltsThatNoJarHasAreMissing(double read, double taken) {
        Survey survey = new Survey();
        survey.volts[1] = read;
        assertThat(LogReadings.voltsPerCell(StringOf.jars(5).plan(), survey.done()))
                .containsExactly(2.25, taken, 2.25, 2.25, 2.25);
        survey.onFloat = false;
        assertThat(LogReadings.voltsPerCell(StringOf.jars(5).plan(), survey.done()))
                .containsOnly(NAN);
    }

    @Test
    void voltsAreSharedByTheCellsOfAJar() {
        StringPlan plan = StringOf.jars(5).plan();
        JarTypeFacts one = plan.jarType();
        JarTypeFacts six =
                new JarTypeFacts("T6", one.technology(), 6, 12, 400, 2.25, NAN, OhmicKind.IMPEDANCE, NAN, 15, 25);
        Survey survey = new Survey();
        Arrays.fill(survey.volts, 13.5);
        assertThat(LogReadings.voltsPerCell(plan.with(six), survey.done())).containsOnly(2.25);
    }

    private static LastSurvey then(LastSurvey before, LocalDate day, @Nullable String instrument, OhmicKind kind) {
        Survey survey = new Survey();
        survey.day = day;
        survey.instrument = instrument;
        survey.kind = kind;
        return before.then(survey.done());
    }

    @Test
    void aChangeOfInstrumentIsSeenAcrossASurveyThatNamesNone() {
        LastSurvey first = then(LastSurvey.NONE, DAY, "A-1", OhmicKind.IMPEDANCE);
        assertThat(first.instrumentChanged()).isFalse();
        assertThat(first.kindChanged()).isFalse();
        LastSurvey unnamed = then(first, DAY.plusDays(1), null, OhmicKind.IMPEDANCE);
        assertThat(unnamed.instrumentChanged()).isFalse();
        LastSurvey other = then(unnamed, DAY.plusDays(2), "B-2", OhmicKind.IMPEDANCE);
        assertThat(other.instrumentChanged()).isTrue();
        assertThat(then(other, DAY.plusDays(3), "B-2", OhmicKind.IMPEDANCE).instrumentChanged())
                .isFalse();
    }

    @Test
    void aChangeOfKindIsSeenOnce() {
        LastSurvey first = then(LastSurvey.NONE, DAY, "A-1", OhmicKind.IMPEDANCE);
        LastSurvey other = then(first, DAY.plusDays(1), "A-1", OhmicKind.CONDUCTANCE);
        assertThat(other.kindChanged()).isTrue();
        assertThat(then(other, DAY.plusDays(2), "A-1", OhmicKind.CONDUCTANCE).kindChanged())
                .isFalse();
    }

    @Test
    void theDayNeverGoesBack() {
        LastSurvey first = then(LastSurvey.NONE, DAY, "A-1", OhmicKind.IMPEDANCE);
        assertThat(then(first, DAY.minusDays(9), "A-1", OhmicKind.IMPEDANCE).takenOn())
                .isEqualTo(DAY);
    }

    @Test
    void whatIsKeptOfTheLastSurveyIsReadBackAsWritten() {
        LastSurvey first = then(LastSurvey.NONE, DAY, "A-1", OhmicKind.values()[0]);
        LastSurvey other = then(first, DAY.plusDays(1), "B-2", OhmicKind.CONDUCTANCE);
        for (LastSurvey last : new LastSurvey[] {LastSurvey.NONE, first, other}) {
            DoubleTape tape = new DoubleTape();
            last.write(tape);
            assertThat(LastSurvey.read(tape)).isEqualTo(last);
        }
    }
}
