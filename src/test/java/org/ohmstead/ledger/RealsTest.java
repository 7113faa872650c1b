package org.ohmstead.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RealsTest {

    @ParameterizedTest
    @ValueSource(strings = {"0.412", "24.6", "2.25", "-0.05", "13.621", "0.00012", "99999.5", "1.2151", "541.37", "0"})
    void whatAnInstrumentShowsComesBackAsWritten(String shown) {
        double value = Double.parseDouble(shown);
        assertThat(Reals.fromReal(Reals.toReal(value))).isEqualTo(value);
    }

    @Test
    void everyDecimalOfSixDigitsComesBackAsWritten() {
        Random random = new Random(11);
        for (int i = 0; i < 200_000; i++) {
            int digits = 1 + random.nextInt(999_999);
            int exponent = -9 + random.nextInt(9);
            double value = Double.parseDouble(digits + "e" + exponent);
            if (value >= 1e-5 && value < 1e5) {
                assertThat(Reals.fromReal(Reals.toReal(value)))
                        .as(digits + "e" + exponent)
                        .isEqualTo(value);
            }
        }
    }

    @Test
    void storingWhatWasReadChangesNothing() {
        Random random = new Random(12);
        for (int i = 0; i < 200_000; i++) {
            float real = Float.intBitsToFloat(random.nextInt());
            if (Float.isFinite(real)) {
                assertThat(Reals.toReal(Reals.fromReal(real))).isEqualTo(real);
            }
        }
    }

    @Test
    void aMissingValueStaysMissing() {
        assertThat(Reals.fromReal(Reals.toReal(Double.NaN))).isNaN();
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e39})
    void whatNoInstrumentShowsIsNotStored(double value) {
        assertThatThrownBy(() -> Reals.toReal(value)).isInstanceOf(IllegalArgumentException.class);
    }
}
