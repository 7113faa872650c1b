package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NormalLogShareTest {

    /** Shares of Abramowitz and Stegun (1964), table 26.1, to the digits given there; ln 1/2 in the middle. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5",
        "1, 0.841344746068543",
        "2, 0.977249868051821",
        "-1, 0.158655253931457",
        "-2, 0.022750131948179",
        "-3, 0.001349898031630"
    })
    void itIsTheLogarithmOfThePublishedShare(double z, double share) {
        assertThat(NormalLogShare.below(z)).isCloseTo(Math.log(share), within(1e-11));
    }

    @Test
    void betweenItsStepsItAgreesWithTheLawItself() {
        for (double z = -12; z < 12; z += 0.00317) {
            assertThat(NormalLogShare.below(z)).as("%s", z).isCloseTo(NormalTail.logShareAbove(-z), within(1e-11));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-9.0000001, -9, -8.9999999, 8.9999999, 9, 9.0000001})
    void atItsEndsItPassesIntoTheLawItself(double z) {
        assertThat(NormalLogShare.below(z)).isCloseTo(NormalTail.logShareAbove(-z), within(1e-11));
    }

    @Test
    void whatIsMissingStaysMissing() {
        assertThat(NormalLogShare.below(Double.NaN)).isNaN();
    }
}
