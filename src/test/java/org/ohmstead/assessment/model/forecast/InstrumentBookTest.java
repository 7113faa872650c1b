package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmstead.assessment.model.StringHistory;

/** What the surveys of an estate tell about the instruments that read them. */
class InstrumentBookTest {
    private static final ForecastParameters SET = ForecastParameters.standard();
    private static final LocalDate DAY = LocalDate.of(2019, 5, 4);

    /** Six strings read every quarter; from the tenth round on another instrument reads high by a share. */
    private static List<InstrumentOffset> offsetsWhenTheNewInstrumentReads(double share, long seed) {
        Random random = new Random(seed);
        List<StringHistory> estate = new ArrayList<>();
        double[] ofDay = new double[18];
        Arrays.setAll(ofDay, round -> .006 * random.nextGaussian());
        for (int s = 0; s < 6; s++) {
            StringOf string = StringOf.jars(24).scatteredBy(random);
            for (int round = 0; round < ofDay.length; round++) {
                boolean isNew = round >= 9;
                double factor = (isNew ? 1 + share : 1) * Math.exp(ofDay[round] + .006 * random.nextGaussian());
                string.instrument = isNew ? "NEW" : "OLD";
                string.surveyedOn(DAY.plusDays(91L * round), (ohmic, volts, links) -> {
                    Arrays.setAll(ohmic, i -> ohmic[i] * factor);
                });
            }
            estate.add(string.history());
        }
        EstateReplay replay = new EstateReplay(estate, SET);
        replay.run((string, survey, forecast) -> {});
        return replay.instruments();
    }

    private static InstrumentOffset of(String instrument, List<InstrumentOffset> offsets) {
        return offsets.stream()
                .filter(offset -> offset.instrument().equals(instrument))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aKnownOffsetLiesWithinItsInterval() {
        int holds = 0;
        int named = 0;
        for (int seed = 0; seed < 20; seed++) {
            InstrumentOffset found = of("NEW", offsetsWhenTheNewInstrumentReads(.10, seed));
            holds += found.low() <= .10 && .10 <= found.high() ? 1 : 0;
            named += found.isOff() && found.offset() > 0 ? 1 : 0;
            assertThat(found.surveys()).isEqualTo(54);
            assertThat(found.days()).isEqualTo(9);
            assertThat(found.since()).isEqualTo(DAY.plusDays(91 * 9));
        }
        assertThat(holds).isGreaterThanOrEqualTo(17);
        assertThat(named).isGreaterThanOrEqualTo(17);
    }

    @Test
    void noneIsAccusedWhenNoneIsOff() {
        int accused = 0;
        for (int seed = 0; seed < 20; seed++) {
            accused += (int) offsetsWhenTheNewInstrumentReads(0, seed).stream()
                    .filter(InstrumentOffset::isOff)
                    .count();
        }
        assertThat(accused).isLessThanOrEqualTo(2);
    }

    @Test
    void anInstrumentThatJumpsMidWayIsJudgedSinceThen() {
        InstrumentBook book = new InstrumentBook(SET);
        for (int day = 0; day < 12; day++) {
            double error = day < 7 ? .001 * (day % 2) : .06;
            book.note("JUMPS", DAY.plusDays(30L * day), new SharedError(error, 1e-5, true), 4);
        }
        InstrumentOffset found = of("JUMPS", book.offsets());
        assertThat(found.since()).isEqualTo(DAY.plusDays(210));
        assertThat(found.days()).isEqualTo(5);
        assertThat(found.surveys()).isEqualTo(20);
        assertThat(found.offset()).isCloseTo(Math.expm1(.06), within(1e-12));
        assertThat(found.isOff()).isTrue();
    }

    /**
     * Weights are one over the variance plus that of days, .015², and .04² per year of use that strings take up; the
     * interval reaches 1.96 standard errors, with .02² that no number of days averages out.
     */
    @Test
    void theIntervalIsThatOfAWeightedMean() {
        InstrumentBook book = new InstrumentBook(SET);
        book.note("A", DAY, new SharedError(.02, 0, true), 1);
        book.note("A", DAY.plusDays(100), new SharedError(.04, 0, true), 2);
        book.note("A", DAY.plusDays(101), SharedError.UNKNOWN, 9);
        InstrumentOffset found = of("A", book.offsets());
        double first = 1 / (.015 * .015);
        double second = 1 / (.015 * .015 + .04 * .04 * 100 / 365.25);
        double mean = (.02 * first + .04 * second) / (first + second);
        double reach = 1.959964 * Math.sqrt(1 / (first + second) + .02 * .02);
        assertThat(found.offset()).isCloseTo(Math.expm1(mean), within(1e-12));
        assertThat(found.low()).isCloseTo(Math.expm1(mean - reach), within(1e-12));
        assertThat(found.high()).isCloseTo(Math.expm1(mean + reach), within(1e-12));
        assertThat(found.surveys()).isEqualTo(3);
    }

    private static final SharedError NEVER_MET = new InstrumentBook(SET).expected("X", DAY);

    @Test
    void aSurveyReadAloneWithAnInstrumentNeverMetTellsNothing() {
        assertThat(SharedError.from(List.of(), NEVER_MET, SET).known()).isFalse();
    }

    /** One other string, its expectation exact: prior .022² + .02² for day and offset, against .012² of its own. */
    @Test
    void anotherStringsErrorIsTakenForTheInstrumentsByTheirVariances() {
        SharedError shared = SharedError.from(List.of(new SurveyInnovation(.03, 0)), NEVER_MET, SET);
        double prior = .022 * .022 + .02 * .02;
        double gain = prior / (prior + .012 * .012);
        assertThat(shared.mean()).isCloseTo(gain * .03, within(1e-12));
        assertThat(shared.variance()).isCloseTo(prior * (1 - gain), within(1e-12));
    }

    /** After one day that says 4 % exactly: the offset's part is .02² of .02² + .022²; a year later it wandered .015². */
    @Test
    void whatOneDayTellsIsExpectedOfTheNext() {
        InstrumentBook book = new InstrumentBook(SET);
        book.note("A", DAY, new SharedError(.04, 0, true), 3);
        double gain = .02 * .02 / (.02 * .02 + .022 * .022);
        SharedError next = book.expected("A", DAY.plusDays(365));
        assertThat(next.known()).isTrue();
        assertThat(next.mean()).isCloseTo(gain * .04, within(1e-12));
        double variance = .02 * .02 * (1 - gain) + .022 * .022 + .015 * .015 * 365 / 365.25;
        assertThat(next.variance()).isCloseTo(variance, within(1e-12));
        assertThat(book.expected("B", DAY).known()).isFalse();
        assertThat(book.expected(null, DAY).known()).isFalse();
    }
}
