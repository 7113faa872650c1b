package org.ohmstead.assessment.model.estate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which surveys tell of an instrument, by docs/assessment.md, "Instruments": errors without scatter, so that nothing hides. */
class InstrumentStepsTest {

    private static final LocalDate DAY = LocalDate.of(2022, 3, 1);
    private static final double NORMAL_975 = 1.959964;

    /** Surveys of an estate, in the order in which they are told. */
    private static final class Estate {

        private final List<SurveyError> surveys = new ArrayList<>();

        /** A string's surveys with one instrument, half a year apart, each string ten days after the one before it. */
        Estate read(int string, String instrument, int firstRound, double... errors) {
            for (int i = 0; i < errors.length; i++) {
                on(string, instrument, DAY.plusDays(182L * (firstRound + i) + 10L * string), errors[i]);
            }
            return this;
        }

        Estate on(int string, String instrument, LocalDate day, double error) {
            surveys.add(new SurveyError(surveys.size(), string, day, instrument, error, 1e-4));
            return this;
        }

        InstrumentOff of(String instrument) {
            return new InstrumentFinder(surveys).of(instrument).orElse(null);
        }
    }

    private static LocalDate day(int string, int round) {
        return DAY.plusDays(182L * round + 10L * string);
    }

    private static List<SurveyError> errors(String instrument, double... errors) {
        List<SurveyError> surveys = new ArrayList<>();
        for (int i = 0; i < errors.length; i++) {
            surveys.add(new SurveyError(i, i, DAY.plusDays(10L * i), instrument, errors[i], 1e-4));
        }
        return surveys;
    }

    private static void says(InstrumentOff found, SharedShift shift) {
        double reach = NORMAL_975 * Math.sqrt(shift.variance());
        assertThat(found.offset()).isCloseTo(Math.expm1(shift.mean()), within(1e-12));
        assertThat(found.low()).isCloseTo(Math.expm1(shift.mean() - reach), within(1e-12));
        assertThat(found.high()).isCloseTo(Math.expm1(shift.mean() + reach), within(1e-12));
    }

    private static final SharedShift NO_REFERENCE = SharedShift.ofReference(List.of(), List.of(), 1);

    /** The first survey of each string after another instrument shows the whole offset. */
    @Test
    void fourStringsReadAfterAnotherInstrumentTellTheOffset() {
        Estate estate = new Estate();
        for (int string = 0; string < 4; string++) {
            estate.read(string, "OLD", 0, 0).read(string, "NEW", 1, .03, -.01, -.01);
        }
        InstrumentOff found = estate.of("NEW");
        says(found, SharedShift.of(errors("NEW", .03, .03, .03, .03)).beyond(NO_REFERENCE));
        assertThat(found.since()).isEqualTo(day(0, 1));
        assertThat(found.days()).isEqualTo(4);
        assertThat(found.evidence())
                .extracting(SurveyError::error)
                .containsOnly(.03)
                .hasSize(4);
    }

    @Test
    void eachInstrumentIsToldByItsOwnSurveys() {
        Estate estate = new Estate();
        for (int string = 0; string < 4; string++) {
            estate.read(string, "OLD", 0, 0).read(string, "NEW", 1, .03);
            estate.read(10 + string, "OLD", 0, 0).read(10 + string, "OTHER", 1, -.05);
        }
        assertThat(estate.of("NEW").evidence())
                .extracting(SurveyError::error)
                .containsOnly(.03)
                .hasSize(4);
        assertThat(estate.of("OTHER").evidence())
                .extracting(SurveyError::error)
                .containsOnly(-.05)
                .hasSize(4);
    }

    @Test
    void threeStringsTellNothing() {
        Estate estate = new Estate();
        for (int string = 0; string < 3; string++) {
            estate.read(string, "OLD", 0, 0).read(string, "NEW", 1, .03);
        }
        assertThat(estate.of("NEW")).isNull();
        assertThat(estate.of("OLD")).isNull();
    }

    @Test
    void surveysWithoutAnErrorTellNothingButAreRead() {
        Estate estate = new Estate();
        for (int string = 0; string < 5; string++) {
            estate.read(string, "OLD", 0, 0).read(string, "NEW", 1, string == 4 ? Double.NaN : .03, .9);
        }
        assertThat(estate.of("NEW").evidence())
                .extracting(SurveyError::error)
                .containsOnly(.03)
                .hasSize(4);
    }

    @Test
    void theOrderInWhichSurveysAreGivenDoesNotMatter() {
        Estate estate = new Estate();
        for (int string = 0; string < 6; string++) {
            estate.read(string, "OLD", 0, 0, .01).read(string, "NEW", 2, .03 + .001 * string, 0, 0);
        }
        InstrumentOff told = estate.of("NEW");
        Collections.shuffle(estate.surveys, new Random(4));
        assertThat(estate.of("NEW")).isEqualTo(told);
    }

    /**
     * What the same strings showed in the three years before is taken off, where the instrument had not just changed; on the
     * first day itself it is one of the other instruments that shows it.
     */
    @ParameterizedTest
    @CsvSource({"2019-03-01, 0, 0", "2019-03-02, 1, 0", "2022-02-28, 1, 0", "2022-03-01, 0, 1"})
    void whatTheSameStringsShowedBeforeIsTakenOff(LocalDate before, int ofPast, int ofOthers) {
        Estate estate = new Estate();
        for (int string = 0; string < 4; string++) {
            estate.on(string, "OLD", LocalDate.of(2010, 1, 1), 0);
        }
        estate.on(0, "OLD", before, .02);
        for (int string = 0; string < 4; string++) {
            estate.on(string, "NEW", DAY.plusDays(10L * string), .03);
        }
        List<SurveyError> old = errors("OLD", .02);
        says(
                estate.of("NEW"),
                SharedShift.of(errors("NEW", .03, .03, .03, .03))
                        .beyond(SharedShift.ofReference(old.subList(0, ofPast), old.subList(0, ofOthers), 1)));
    }

    @Test
    void whatOtherStringsShowedBeforeIsNot() {
        Estate estate = new Estate();
        estate.on(9, "OLD", LocalDate.of(2021, 1, 1), 0).on(9, "OLD", LocalDate.of(2021, 9, 1), .02);
        for (int string = 0; string < 4; string++) {
            estate.on(string, "OLD", LocalDate.of(2021, 1, 1), 0).on(string, "NEW", DAY.plusDays(10L * string), .03);
        }
        says(estate.of("NEW"), SharedShift.of(errors("NEW", .03, .03, .03, .03)).beyond(NO_REFERENCE));
    }

    /** What unchanged instruments show from the first to the last of these days is taken off. */
    @ParameterizedTest
    @CsvSource({
        "2022-02-28, STAYS, false",
        "2022-03-01, STAYS, true",
        "2022-03-31, STAYS, true",
        "2022-04-01, STAYS, false",
        "2022-03-15, NEW, false"
    })
    void whatOtherInstrumentsShowAtTheTimeIsTakenOff(LocalDate day, String instrument, boolean counts) {
        Estate estate = new Estate();
        estate.on(9, instrument, LocalDate.of(2021, 1, 1), 0).on(9, instrument, day, .02);
        for (int string = 0; string < 4; string++) {
            estate.on(string, "OLD", LocalDate.of(2021, 6, 1), 0).on(string, "NEW", DAY.plusDays(10L * string), .03);
        }
        List<SurveyError> others = counts ? errors("STAYS", .02) : List.of();
        says(
                estate.of("NEW"),
                SharedShift.of(errors("NEW", .03, .03, .03, .03))
                        .beyond(SharedShift.ofReference(List.of(), others, 1)));
    }

    @Test
    void aStringJustReadWithAnotherInstrumentIsNoReference() {
        Estate estate = new Estate();
        estate.on(9, "STAYS", LocalDate.of(2022, 3, 15), .02);
        for (int string = 0; string < 4; string++) {
            estate.on(string, "OLD", LocalDate.of(2021, 6, 1), 0).on(string, "NEW", DAY.plusDays(10L * string), .03);
        }
        says(estate.of("NEW"), SharedShift.of(errors("NEW", .03, .03, .03, .03)).beyond(NO_REFERENCE));
    }

    /**
     * From thirty unchanged surveys on errors are scaled to how they really scatter: the middle of their squares over that of
     * chi-square with one degree of freedom, .4549, but no less than a quarter and no more than twice.
     */
    @ParameterizedTest
    @CsvSource({"29, 0, 1", "30, 0, .25", "30, .02, 1.87491", "30, .05, 2"})
    void errorsAreScaledToHowTheEstatesSurveysScatter(int unchanged, double error, double factor) {
        Estate estate = new Estate();
        for (int string = 0; string < 4; string++) {
            estate.on(string, "OLD", LocalDate.of(2021, 6, 1), 0).on(string, "NEW", DAY.plusDays(10L * string), .03);
        }
        for (int string = 10; string < 10 + unchanged; string++) {
            estate.on(string, "FAR", LocalDate.of(2010, 1, 1), 0)
                    .on(string, "FAR", LocalDate.of(2010, 7, 1), string % 2 == 0 ? error : -error);
        }
        SharedShift alone = SharedShift.of(errors("NEW", .03, .03, .03, .03)).scaled(factor);
        InstrumentOff found = estate.of("NEW");
        double reach = NORMAL_975 * Math.sqrt(alone.beyond(NO_REFERENCE).variance());
        assertThat(found.high()).isCloseTo(Math.expm1(.03 + reach), within(1e-6));
    }

    private static double[] then(int rounds, double... last) {
        double[] errors = new double[rounds + last.length];
        System.arraycopy(last, 0, errors, rounds, last.length);
        return errors;
    }

    private static Estate always(int strings, double... errors) {
        Estate estate = new Estate();
        for (int string = 0; string < strings; string++) {
            estate.read(string, "TS", 0, errors);
        }
        return estate;
    }

    /** Four surveys in a row with it, the one that tells included. */
    @Test
    void aStepIsSeenFromTheFourthSurveyOfAStringOn() {
        InstrumentOff found = always(6, then(3, .06)).of("TS");
        assertThat(found.since()).isEqualTo(day(0, 3));
        assertThat(found.evidence()).hasSize(6);
        assertThat(found.offset()).isBetween(.05, .062);
        assertThat(always(6, then(2, .06)).of("TS")).isNull();
    }

    /** Six after another instrument. */
    @ParameterizedTest
    @CsvSource({"5, true", "4, false"})
    void aStepAfterAnotherInstrumentIsSeenFromTheSixthSurveyOn(int before, boolean seen) {
        Estate estate = new Estate();
        for (int string = 0; string < 6; string++) {
            estate.read(string, "OLD", 0, 0).read(string, "TS", 1, then(before, .06));
        }
        InstrumentOff found = estate.of("TS");
        assertThat(found.since()).isEqualTo(seen ? day(0, before + 1) : day(0, 1));
        assertThat(found.isOff(.015)).isEqualTo(seen);
    }

    @Test
    void threeStringsMakeNoStep() {
        assertThat(always(3, then(3, .08)).of("TS")).isNull();
        assertThat(always(4, then(3, .08)).of("TS")).isNotNull();
    }

    /** However clear, as it is beside sixty other instruments: less than 1 % is no step. */
    @ParameterizedTest
    @CsvSource({".0099, false", ".0105, true"})
    void aStepOfLessThanOnePercentIsNone(double step, boolean seen) {
        Estate estate = always(200, then(3, step));
        for (int other = 0; other < 60; other++) {
            estate.on(1000 + other, "I" + other, DAY, 0).on(1000 + other, "I" + other, day(100, 3), 0);
        }
        assertThat(estate.of("TS") != null).isEqualTo(seen);
    }

    /** The first of each string since its day: later ones are the string's own level, which has followed. */
    @Test
    void theFirstSurveyOfEachStringSinceTheStepTells() {
        InstrumentOff found = always(6, then(5, .06, .02, .01)).of("TS");
        assertThat(found.since()).isEqualTo(day(0, 5));
        assertThat(found.evidence())
                .extracting(SurveyError::error)
                .containsOnly(.06)
                .hasSize(6);
        assertThat(found.days()).isEqualTo(6);
    }

    @Test
    void aStepThatWasUndoneLeavesNothing() {
        InstrumentOff found = always(6, then(5, .06, 0, 0, -.06)).of("TS");
        assertThat(found.since()).isEqualTo(day(0, 8));
        assertThat(found.offset()).isBetween(-.01, .01);
        assertThat(found.isOff(.015)).isFalse();
    }

    /** Three fifths of it and more undo a step; less is its echo. */
    @ParameterizedTest
    @CsvSource({"-.048, true", "-.02, false"})
    void aLesserMoveBackIsAnEcho(double back, boolean undone) {
        InstrumentOff found = always(12, then(5, .06, 0, 0, back)).of("TS");
        assertThat(found.since()).isEqualTo(undone ? day(0, 8) : day(0, 5));
        assertThat(found.offset()).isBetween(undone ? 0 : .05, undone ? .03 : .07);
    }

    /** The step is put on the level that strings read after another instrument had shown before. */
    @Test
    void aStepStandsOnTheLevelBefore() {
        Estate estate = always(6, then(5, .06));
        for (int string = 10; string < 16; string++) {
            estate.read(string, "OLD", 0, 0).read(string, "TS", 1, .03);
        }
        InstrumentOff found = estate.of("TS");
        assertThat(found.since()).isEqualTo(day(0, 5));
        assertThat(found.offset()).isBetween(.075, .095);
        assertThat(found.evidence())
                .extracting(SurveyError::error)
                .containsOnly(.06)
                .hasSize(6);
    }

    /** Strings that were read with it for the first time since the step tell the whole offset too, and join the evidence. */
    @Test
    void whatIsSeenSinceTheStepJoinsIt() {
        Estate estate = always(6, then(5, .06));
        for (int string = 10; string < 16; string++) {
            estate.read(string, "OLD", 0, 0).read(string, "TS", 6, .06);
        }
        InstrumentOff alone = always(6, then(5, .06)).of("TS");
        InstrumentOff found = estate.of("TS");
        assertThat(found.evidence()).hasSize(12);
        assertThat(found.evidence()).extracting(SurveyError::on).isSorted();
        assertThat(found.offset()).isBetween(.05, .065);
        assertThat(found.high() - found.low()).isLessThan(.95 * (alone.high() - alone.low()));
    }

    /** Off by the threshold or more, and the interval leaves zero out. */
    @ParameterizedTest
    @CsvSource({
        ".015, .001, .03, true",
        ".0149, .001, .03, false",
        ".015, 0, .03, false",
        "-.015, -.03, -.001, true",
        "-.015, -.03, 0, false"
    })
    void anInstrumentIsOffByRule(double offset, double low, double high, boolean off) {
        assertThat(InstrumentOff.isOff(offset, low, high, .015)).isEqualTo(off);
        assertThat(new InstrumentOff(offset, low, high, DAY, List.of(), 0).isOff(.015))
                .isEqualTo(off);
    }

    @ParameterizedTest
    @CsvSource({".01, 1e-4, true", "NaN, 1e-4, false", ".01, NaN, false", "Infinity, 1e-4, false"})
    void aSurveyTellsWhenItsErrorAndWhatWasExpectedAreKnown(double error, double variance, boolean tells) {
        assertThat(new SurveyError(1, 1, DAY, "TS", error, variance).tells()).isEqualTo(tells);
    }
}
