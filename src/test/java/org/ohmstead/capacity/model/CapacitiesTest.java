package org.ohmstead.capacity.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Technology;

/**
 * Worked examples computed by hand from the published methods: rate-adjusted by EnerSys US-FL-IOM-002 §13.1, linear by a
 * maker's note in the form of IEC 60896 with reference 25 °C.
 */
class CapacitiesTest {

    private static final Ratings EIGHT_HOURS = new Ratings(100, 480, 25, 1.75);

    private static Discharge drawn(double amps, double hours, double celsius) {
        return new Discharge(amps, hours * 60, celsius, false);
    }

    private static Capacity rateAdjusted(Discharge drawn) {
        return Capacities.of(Method.RATE_ADJUSTED, EIGHT_HOURS, drawn, Technology.VENTED_LEAD_ACID, null);
    }

    /** IEEE 485 table 1, its range from a secondary source, its values recalled from memory. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/capacity/temperature_factors.csv", numLinesToSkip = 1)
    void eachRowOfTheFactorTableIsHeld(double fahrenheit, double k, String source) {
        assertThat(TemperatureFactors.at((fahrenheit - 32) * 5 / 9)).as(source).isCloseTo(k, within(1e-9));
    }

    @Test
    void betweenRowsTheFactorRunsStraight() {
        // half way between 60 °F (1.110) and 65 °F (1.080)
        assertThat(TemperatureFactors.at((62.5 - 32) * 5 / 9)).isCloseTo(1.095, within(1e-9));
        assertThat(TemperatureFactors.at(-3.9)).isCloseTo(1.520, within(1e-3));
        assertThat(TemperatureFactors.at(51.7)).isCloseTo(0.850, within(1e-3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-4.5, 52.5, Double.NaN})
    void outsideTheTableNothingIsExtrapolated(double celsius) {
        assertThatThrownBy(() -> TemperatureFactors.at(celsius))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("nothing is extrapolated");
    }

    @Test
    void aCoolStringIsRunAtThePublishedCurrentOverKAndTimed() {
        // 100 A for 8 h rated, 15.6 °C (60 °F rounded), K 1.110: 90.09 A; 7.60 h are 95.0 %
        Capacity capacity = rateAdjusted(drawn(90.09, 7.60, 15.6));
        assertThat(capacity.percent()).isCloseTo(95.0, within(0.05));
        assertThat(capacity.computation())
                .contains("at 15.6 °C K is 1.110")
                .contains("so 90.13 A are to be drawn")
                .contains("456.0 / 480 = 95.0 %");
        assertThat(TemperatureFactors.at(15.6)).isCloseTo(1.110, within(5e-4));
        assertThat(100 / TemperatureFactors.at(15.6)).isCloseTo(90.09, within(0.05));
    }

    @Test
    void anotherCurrentThanTheMethodAsksForIsRefused() {
        assertThatThrownBy(() -> rateAdjusted(drawn(100, 7.6, 15.6)))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("The method asks for 90.13 A")
                .hasMessageContaining("take the published figures");
        assertThat(rateAdjusted(drawn(91.8, 7.6, 15.6)).percent()).isCloseTo(95, within(0.05));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/capacity/worked.csv", numLinesToSkip = 1)
    void workedExamplesComeOut(
            Method method,
            double ratedAmps,
            double ratedHours,
            double reference,
            double amps,
            double hours,
            double celsius,
            double expected,
            String unit,
            String source) {
        Ratings ratings = new Ratings(ratedAmps, ratedHours * 60, reference, 1.75);
        Capacity capacity =
                Capacities.of(method, ratings, drawn(amps, hours, celsius), Technology.VENTED_LEAD_ACID, null);
        boolean percent = unit.equals("%");
        assertThat(percent ? capacity.percent() : capacity.percent() / 100 * ratings.ampereHours())
                .as(source)
                .isCloseTo(expected, within(percent ? 0.05 : 0.005));
        assertThat(capacity.computation()).contains(String.valueOf(expected));
    }

    /** Seeded, so that a failure comes back. */
    private static DoubleStream celsius(double low, double high) {
        return new Random(485L).doubles(1000, low, high);
    }

    @Test
    void warmerCellsNeverNeedToBeLarger() {
        assertThat(celsius(-3.9, 51.6).boxed())
                .allSatisfy(
                        t -> assertThat(TemperatureFactors.at(t + 0.1)).isLessThanOrEqualTo(TemperatureFactors.at(t)));
    }

    /** Whoever draws what the method asks for, for as long as it says, has shown the rated capacity. */
    @Test
    void theRatedDischargeIsAHundredPercentAtAnyTemperature() {
        assertThat(celsius(-3.9, 51.7).boxed())
                .allSatisfy(t -> assertThat(rateAdjusted(drawn(100 / TemperatureFactors.at(t), 8, t))
                                .percent())
                        .isCloseTo(100, within(1e-9)));
        Ratings tenHours = new Ratings(50, 600, 20, 1.80);
        assertThat(celsius(0, 40).boxed()).allSatisfy(t -> {
            double hours = 10 * (1 + 0.006 * (t - 20));
            assertThat(Capacities.of(Method.LINEAR, tenHours, drawn(50, hours, t), Technology.GEL, null)
                            .percent())
                    .isCloseTo(100, within(1e-9));
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 5, 8, 24})
    void betweenTheKnownRatesACoefficientMustBeEntered(double hours) {
        Ratings ratings = new Ratings(100, hours * 60, 25, 1.75);
        assertThatThrownBy(() -> Capacities.of(Method.LINEAR, ratings, drawn(100, hours, 20), Technology.GEL, null))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("enter the maker's");
        // 100 % drawn five kelvin under the reference, 0.008 per kelvin: 1 / 0.96
        assertThat(Capacities.of(Method.LINEAR, ratings, drawn(100, hours, 20), Technology.GEL, 0.008)
                        .percent())
                .isCloseTo(104.17, within(0.005));
    }

    @Test
    void theFactorsAreNotTakenForNickelCadmiumNorForAnotherReference() {
        assertThatThrownBy(() -> Capacities.of(
                        Method.RATE_ADJUSTED, EIGHT_HOURS, drawn(100, 8, 25), Technology.NICKEL_CADMIUM, null))
                .hasMessageContaining("those of lead-acid cells");
        Ratings at20 = new Ratings(100, 480, 20, 1.75);
        assertThatThrownBy(() ->
                        Capacities.of(Method.RATE_ADJUSTED, at20, drawn(100, 8, 20), Technology.VENTED_LEAD_ACID, null))
                .hasMessageContaining("refer to 25 °C, the rating to 20 °C");
    }

    @Test
    void aTestStoppedEarlyGivesALeastFigure() {
        Capacity capacity = rateAdjusted(new Discharge(100, 480, 25, true));
        assertThat(capacity.atLeast()).isTrue();
        assertThat(capacity.computation()).contains("at least");
    }

    @Test
    void figuresThatCannotBeAreRefused() {
        assertThatThrownBy(() -> new Ratings(0, 480, 25, 1.75)).isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new Ratings(100, 480, 25, 12)).hasMessageContaining("volts per cell");
        assertThatThrownBy(() -> new Discharge(100, Double.POSITIVE_INFINITY, 25, false))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(() -> new Discharge(100, 100, Double.NaN, false)).isInstanceOf(Refused.class);
    }
}
