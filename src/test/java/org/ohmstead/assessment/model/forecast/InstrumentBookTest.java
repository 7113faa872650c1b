package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the surveys of an estate tell about the instruments that read them. */
class InstrumentBookTest {
    private static final LocalDate DAY = LocalDate.of(2019, 5, 4);

    private static InstrumentOffset of(String instrument, List<InstrumentOffset> offsets) {
        return offsets.stream()
                .filter(offset -> offset.instrument().equals(instrument))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anInstrumentThatJumpsMidWayIsJudgedSinceThen() {
        InstrumentBook book = new InstrumentBook();
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
     * Weights are one over the variance plus that of days, .015²; the interval reaches 1.96 standard errors. Two days of
     * 2 % and 4 %, known exactly: mean 3 %, standard error .015/√2.
     */
    @Test
    void theIntervalIsThatOfAWeightedMean() {
        InstrumentBook book = new InstrumentBook();
        book.note("A", DAY, new SharedError(.02, 0, true), 1);
        book.note("A", DAY.plusDays(1), new SharedError(.04, 0, true), 2);
        book.note("A", DAY.plusDays(2), SharedError.UNKNOWN, 9);
        InstrumentOffset found = of("A", book.offsets());
        double reach = 1.959964 * .015 / Math.sqrt(2);
        assertThat(found.offset()).isCloseTo(Math.expm1(.03), within(1e-12));
        assertThat(found.low()).isCloseTo(Math.expm1(.03 - reach), within(1e-12));
        assertThat(found.high()).isCloseTo(Math.expm1(.03 + reach), within(1e-12));
        assertThat(found.surveys()).isEqualTo(3);
    }

    @Test
    void aSurveyReadAloneTellsNothingOfItsInstrument() {
        assertThat(SharedError.from(List.of(), ForecastParameters.standard()).known())
                .isFalse();
    }

    /** One other string, its expectation exact: the day's spread .022 against its own .012 weighs it by .0484 / .0628. */
    @Test
    void anotherStringsErrorIsTakenForTheInstrumentsByTheirVariances() {
        SharedError shared = SharedError.from(List.of(new SurveyInnovation(.03, 0)), ForecastParameters.standard());
        double prior = .022 * .022;
        double gain = prior / (prior + .012 * .012);
        assertThat(shared.mean()).isCloseTo(gain * .03, within(1e-12));
        assertThat(shared.variance()).isCloseTo(prior * (1 - gain), within(1e-12));
    }
}
