package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.kernel.Technology;

class PublishedFiguresTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/battery/float_compensation.csv", numLinesToSkip = 1)
    void floatVoltageFollowsTheMakersTable(
            Technology technology, double setpoint, double celsius, double volts, String source) {
        assertThat(FloatVoltage.perCell(technology, setpoint, celsius))
                .as(source)
                .isCloseTo(volts, within(1e-9));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/battery/life_factors.csv", numLinesToSkip = 1)
    void lifeHalvesWithHeat(double celsius, double halvingKelvin, double factor, String source) {
        assertThat(ServiceLife.factor(celsius, 25, halvingKelvin)).as(source).isCloseTo(factor, within(0.0005));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/battery/limits.csv", numLinesToSkip = 1)
    void standardLimitsAreThePublishedOnes(Limit limit, double value, String source) {
        assertThat(Limits.standard().of(limit)).as(source).isEqualTo(value);
    }

    @ParameterizedTest
    @EnumSource(Limit.class)
    void everyLimitSaysWhereItComesFrom(Limit limit) {
        assertThat(limit.source()).isNotBlank();
        assertThat(limit.unit()).isNotBlank();
        assertThat(limit.standard()).isPositive();
    }

    @ParameterizedTest
    @EnumSource(Limit.class)
    void everyLimitStandsInTheDocumentWithItsDefault(Limit limit) throws IOException {
        int decimals = limit.standard() < 0.1 ? 3 : 2;
        String row = "| `" + limit + "` | "
                + BigDecimal.valueOf(limit.standard())
                        .setScale(decimals, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString();
        assertThat(Files.readString(Path.of("docs", "assessment.md")).replaceAll("(\\.\\d)0 ", "$1 "))
                .contains(row + " ");
    }

    /** Average +10 % or +5 µΩ, whichever is greater: makers' manuals 92.30 §7.7 and 95.10 §7.6; worked by hand. */
    @ParameterizedTest
    @CsvSource({"20, 25", "40, 45", "50, 55", "60, 66", "100, 110"})
    void aNewJointMayHaveTheAverageAndTenPercentOrFiveMicroohms(double average, double limit) {
        assertThat(LinkCase.installationLimit(average, Limits.standard())).isCloseTo(limit, within(1e-9));
    }

    @Test
    void anOwnLimitStandsInPlaceOfTheStandardOne() {
        Limits own = Limits.standard().with(Limit.JAR_RISE_ACT, 0.4);
        assertThat(own.of(Limit.JAR_RISE_ACT)).isEqualTo(0.4);
        assertThat(own.of(Limit.JAR_RISE_PLAN)).isEqualTo(Limit.JAR_RISE_PLAN.standard());
    }

    @Test
    void aLimitThatIsNoPositiveNumberIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Limits.standard().with(Limit.RIPPLE, Double.NaN))
                .withMessageContaining("RIPPLE");
    }
}
