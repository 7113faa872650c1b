package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.assessment.model.estate.InstrumentFinder;
import org.ohmstead.assessment.model.estate.InstrumentOff;
import org.ohmstead.assessment.model.estate.SurveyError;

/** Strings that are followed one by one, as by the running service, and what their surveys together tell of a test set. */
class InstrumentFinderTest {

    private static final double THRESHOLD = .015;
    private static final LocalDate DAY = LocalDate.of(2019, 5, 4);
    private static final int ROUNDS = 14;

    /** What an instrument shows for 1, and which one reads a string in a round. */
    private interface Story {
        String instrument(int string, int round);

        double shows(String instrument, int round);
    }

    private static List<SurveyError> errors(int strings, long seed, Story story) {
        Random random = new Random(seed);
        List<SurveyError> errors = new ArrayList<>();
        double[][] ofDay = new double[strings][ROUNDS];
        for (double[] days : ofDay) {
            Arrays.setAll(days, round -> .008 * random.nextGaussian());
        }
        for (int s = 0; s < strings; s++) {
            errors.addAll(errors(s, random, story, ofDay[s / 2]));
        }
        return errors;
    }

    /** Two strings share each day. */
    private static List<SurveyError> errors(int s, Random random, Story story, double[] ofDay) {
        StringOf string = StringOf.jars(12).scatteredBy(random);
        double wear = .01 + .02 * random.nextDouble();
        for (int round = 0; round < ROUNDS; round++) {
            string.instrument = story.instrument(s, round);
            double factor = story.shows(string.instrument, round)
                    * Math.exp(ofDay[round] + .008 * random.nextGaussian() + wear * round / 4);
            string.surveyedOn(DAY.plusDays(182L * round + 9L * (s / 2)), (ohmic, volts, links) -> {
                Arrays.setAll(ohmic, i -> ohmic[i] * factor);
            });
        }
        Forecaster forecaster = string.forecaster();
        ForecastState state = forecaster.start();
        List<SurveyError> errors = new ArrayList<>();
        for (SurveyReadings survey : string.history().surveys()) {
            SurveyInnovation innovation = forecaster.innovation(state, survey);
            errors.add(new SurveyError(
                    1000L * s + survey.surveyId(),
                    s,
                    survey.takenOn(),
                    String.valueOf(survey.instrument()),
                    innovation.value(),
                    innovation.variance()));
            state = forecaster.advance(state, survey);
        }
        return errors;
    }

    /** From the ninth round on the first half of the strings is read with another one. */
    private static InstrumentOff ofNew(double share, long seed) {
        List<SurveyError> errors = errors(24, seed, new Story() {
            @Override
            public String instrument(int string, int round) {
                return string >= 12 ? "SOUTH" : round >= 9 ? "NEW" : "NORTH";
            }

            @Override
            public double shows(String instrument, int round) {
                return instrument.equals("NEW") ? 1 + share : 1;
            }
        });
        return new InstrumentFinder(errors).of("NEW").orElseThrow();
    }

    @Test
    void threePercentAreFoundWithinTheInterval() {
        int holds = 0;
        int named = 0;
        for (int seed = 0; seed < 20; seed++) {
            InstrumentOff found = ofNew(.03, 500 + seed);
            holds += found.low() <= .03 && .03 <= found.high() ? 1 : 0;
            named += found.isOff(THRESHOLD) ? 1 : 0;
            assertThat(found.since()).isEqualTo(DAY.plusDays(182 * 9));
            assertThat(found.evidence()).hasSize(12);
            assertThat(found.high() - found.low()).isLessThan(.05);
        }
        assertThat(holds).isGreaterThanOrEqualTo(17);
        assertThat(named).isGreaterThanOrEqualTo(17);
    }

    @Test
    void aTrueInstrumentIsNotAccused() {
        int accused = 0;
        int holds = 0;
        for (int seed = 0; seed < 40; seed++) {
            InstrumentOff found = ofNew(0, 900 + seed);
            accused += found.isOff(THRESHOLD) ? 1 : 0;
            holds += found.low() <= 0 && 0 <= found.high() ? 1 : 0;
        }
        assertThat(accused).isLessThanOrEqualTo(2);
        assertThat(holds).isGreaterThanOrEqualTo(35);
    }

    private static Story stepsBy(double share) {
        return new Story() {
            @Override
            public String instrument(int string, int round) {
                return string < 14 ? "STEPS" : "STAYS";
            }

            @Override
            public double shows(String instrument, int round) {
                return instrument.equals("STEPS") && round >= 10 ? 1 + share : 1;
            }
        };
    }

    @Test
    void anInstrumentThatBeginsToReadHighIsFoundWithTheDay() {
        int found = 0;
        for (int seed = 0; seed < 20; seed++) {
            List<SurveyError> errors = errors(28, 40 + seed, stepsBy(.04));
            InstrumentOff off = new InstrumentFinder(errors).of("STEPS").orElse(null);
            boolean holds = off != null && off.low() <= .04 && .04 <= off.high() && off.isOff(THRESHOLD);
            LocalDate day = DAY.plusDays(182 * 10);
            found += holds && Math.abs(off.since().toEpochDay() - day.toEpochDay()) < 60 ? 1 : 0;
            InstrumentOff other = new InstrumentFinder(errors).of("STAYS").orElse(null);
            assertThat(other == null || !other.isOff(THRESHOLD)).isTrue();
        }
        assertThat(found).isGreaterThanOrEqualTo(16);
    }

    @Test
    void anInstrumentThatNeverChangedAndWasAlwaysThereTellsNothing() {
        for (int seed = 0; seed < 20; seed++) {
            assertThat(new InstrumentFinder(errors(12, 70 + seed, stepsBy(0))).of("STEPS"))
                    .isEmpty();
        }
        assertThat(new InstrumentFinder(List.of()).of("STEPS")).isEmpty();
    }

    /** Four strings of which three read high by 3 % on days of their own, one by 60 % since it was renewed. */
    @Test
    void aStringThatChangedItselfHardlyWeighs() {
        List<SurveyError> errors = new ArrayList<>();
        for (int s = 0; s < 6; s++) {
            errors.add(new SurveyError(s, s, DAY, "OLD", .001, 1e-4));
            LocalDate day = DAY.plusDays(180 + 10L * s);
            errors.add(new SurveyError(100 + s, s, day, "NEW", s == 3 ? -.6 : .03, 1e-4));
        }
        InstrumentOff found = new InstrumentFinder(errors).of("NEW").orElseThrow();
        assertThat(found.offset()).isCloseTo(.02, within(.015));
    }
}
