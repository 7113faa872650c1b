package org.ohmstead.intake.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainNumberTest {

    @Test
    void itsValueIsThatOfDecimalArithmeticToTheLastBit() {
        SplittableRandom random = new SplittableRandom(29);
        for (int n = 0; n < 20_000; n++) {
            long digits = random.nextLong(0, (long) Math.pow(10, random.nextInt(1, 16)));
            int decimals = random.nextInt(0, 7);
            String text = new BigDecimal(digits).movePointLeft(decimals).toPlainString();
            int power = random.nextInt(-6, 7);
            PlainNumber plain = PlainNumber.of(text);
            if (plain != null) {
                double exact = new BigDecimal(text).scaleByPowerOfTen(power).doubleValue();
                assertThat(plain.times(power)).as(text + "e" + power).isEqualTo(exact);
            } else {
                assertThat(digits / Math.pow(10, decimals)).as(text).isGreaterThanOrEqualTo(1e9 * (1 - 1e-9));
            }
        }
    }

    @Test
    void aPointWithoutDecimalsIsAPoint() {
        PlainNumber twelve = Objects.requireNonNull(PlainNumber.of("12."));

        assertThat(twelve.hasPoint()).isTrue();
        assertThat(twelve.times(0)).isEqualTo(12);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ".",
                ".5",
                "-1",
                "+1",
                "1e3",
                "1,5",
                "1.2.3",
                "0x1",
                "n/a",
                "1234567890",
                "1.1234567",
                "١",
                " 1"
            })
    void whateverIsWrittenInAnotherWayIsLeftToTheReaderOfNumbers(String text) {
        assertThat(PlainNumber.of(text)).isNull();
    }
}
