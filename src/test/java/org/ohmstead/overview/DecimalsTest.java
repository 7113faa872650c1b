package org.ohmstead.overview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {

    @Test
    void aNumberReadsAsTheGeneralFormatterWritesIt() {
        Random random = new Random(2);
        for (int i = 0; i < 50_000; i++) {
            double value = random.nextGaussian() * Math.pow(10, random.nextInt(12) - 4);
            int decimals = random.nextInt(4);
            assertThat(Decimals.of(value, decimals)).isEqualTo(general(value, decimals));
        }
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {0, -0.0, 0.5, 1.5, 2.5, -0.05, 0.0005, 1.005, 0.125, 999.9995, 999_999.5, 1e12, -1e15, 0.3515})
    void numbersOnAndBesideARoundingEdgeToo(double value) {
        for (int decimals = 0; decimals < 6; decimals++) {
            assertThat(Decimals.of(value, decimals)).isEqualTo(general(value, decimals));
        }
    }

    private static String general(double value, int decimals) {
        return String.format(Locale.UK, "%,." + decimals + "f", value).replace('-', '−');
    }
}
