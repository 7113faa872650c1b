package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.ohmstead.kernel.Conductor;
import org.ohmstead.kernel.Conductor.Flexibility;

class ConductorsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/battery/conductors_metric.csv", numLinesToSkip = 1)
    void metricSizesHaveTheTablesResistanceAtTwentyDegrees(
            String size, Flexibility flexibility, double ohmsPerKm, String source) {
        double microohms = Conductors.microohms(new Conductor(size, flexibility, 1, 1), 20);
        assertThat(microohms).as(source).isCloseTo(ohmsPerKm * 1000, within(1e-9));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/battery/conductors_american.csv", numLinesToSkip = 1)
    void americanSizesHaveTheTablesResistanceAtSeventyFiveDegrees(String size, double ohmsPer1000Feet, String source) {
        double microohms = Conductors.microohms(new Conductor(size, Flexibility.CLASS_2, 304.8, 1), 75);
        assertThat(microohms).as(source).isCloseTo(ohmsPer1000Feet * 1e6, within(1e-6));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/battery/conductor_temperature_factors.csv", numLinesToSkip = 1)
    void resistanceFollowsTheTablesTemperatureFactors(double celsius, double factor, String source) {
        Conductor cable = new Conductor("95", Flexibility.CLASS_5, 1.2, 2);
        double ratio = Conductors.microohms(cable, 20) / Conductors.microohms(cable, celsius);
        assertThat(ratio).as(source).isCloseTo(factor, within(0.0005));
    }

    /** Worked by hand from IEC 60228: 0.206 Ω/km × 1.2 m / 2, and over 0.962 at 30 °C. */
    @Test
    void twoFlexibleCablesInParallelGiveTheWorkedExample() {
        Conductor cable = new Conductor("95 mm²", Flexibility.CLASS_5, 1.2, 2);
        assertThat(Conductors.microohms(cable, 20)).isCloseTo(123.6, within(0.05));
        assertThat(Conductors.microohms(cable, 30)).isCloseTo(128.5, within(0.05));
    }

    /** 2/0 AWG is 67.4 mm²; by the IEC 60028 standard of 1/58 Ω·mm²/m that is 255.8 µΩ per metre, strands some % more. */
    @Test
    void anAmericanSizeAgreesWithItsCrossSection() {
        double microohms = Conductors.microohms(new Conductor("2/0 awg", Flexibility.CLASS_2, 1, 1), 20);
        assertThat(microohms).isBetween(255.8, 255.8 * 1.03);
    }

    @Test
    void anUnknownSizeHasNoResistance() {
        Conductor odd = new Conductor("97", Flexibility.CLASS_2, 1, 1);
        assertThat(Conductors.microohms(odd, 20)).isNaN();
        assertThat(Conductors.knows(odd)).isFalse();
        assertThat(Conductors.knows(new Conductor("95 mm²", Flexibility.CLASS_5, 1, 1)))
                .isTrue();
        assertThat(Conductors.sizes()).contains("95", "2/0 AWG", "250 kcmil").doesNotContain("97");
    }
}
