package org.ohmstead.assessment.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.kernel.OhmicKind;

/** Missing numbers, limits and facts of jar types, and how numbers are said. */
class NumbersTest {

    private static final double NAN = Double.NaN;

    @Test
    void whatIsBeyondAnArrayIsMissing() {
        double[] values = {7, 8};
        assertThat(Numbers.at(values, 0)).isEqualTo(7);
        assertThat(Numbers.at(values, 1)).isEqualTo(8);
        assertThat(Numbers.at(values, 2)).isNaN();
        assertThat(Numbers.at(values, -1)).isNaN();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void whatCannotBeMeasuredIsMissing(double value) {
        assertThat(Numbers.positive(value)).isNaN();
        assertThat(Numbers.positive(1e-9)).isEqualTo(1e-9);
    }

    @Test
    void numbersAreSaidWithUnitAndTrueMinus() {
        assertThat(Words.change(-0.136)).isEqualTo("\u221214 %");
        assertThat(Words.fineChange(0.0316)).isEqualTo("+3.2 %");
        assertThat(Words.percent(0.85)).isEqualTo("85 %");
        assertThat(Words.millivolts(29.6)).isEqualTo("30 mV");
        assertThat(Words.celsius(-3.25)).isEqualTo("\u22123.3 °C");
        assertThat(Words.years(8.04)).isEqualTo("8.0 years");
        assertThat(Words.volts(2.2)).isEqualTo("2.200 V");
    }

    /** Three figures that count, as instruments give them. */
    @ParameterizedTest
    @CsvSource({
        "0.4123, IMPEDANCE, 0.412 mΩ",
        "4.123, RESISTANCE, 4.12 mΩ",
        "41.23, IMPEDANCE, 41.2 mΩ",
        "999.6, CONDUCTANCE, 1000 S",
        "1812.4, CONDUCTANCE, 1812 S",
        "0, IMPEDANCE, 0.00 mΩ"
    })
    void ohmicValuesAreSaidWithThreeFigures(double value, OhmicKind kind, String words) {
        assertThat(Words.ohmic(kind, value)).isEqualTo(words);
    }

    @Test
    void sixNumbersAreListedAndMoreAreCounted() {
        assertThat(Words.list(List.of(1, 2, 3, 4, 5, 6))).isEqualTo("1, 2, 3, 4, 5, 6");
        assertThat(Words.list(List.of(1, 2, 3, 4, 5, 6, 7))).isEqualTo("1, 2, 3, 4, 5, 6 and 1 more");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aLimitThatIsNoPositiveNumberIsRefused(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Limits.standard().with(Limit.RIPPLE, value))
                .withMessageStartingWith("RIPPLE must be a positive number");
    }

    @Test
    void limitsSetOneAfterAnotherAllHold() {
        Limits own = Limits.standard().with(Limit.RIPPLE, 4).with(Limit.JAR_RISE_ACT, 0.4);
        assertThat(own.of(Limit.RIPPLE)).isEqualTo(4);
        assertThat(own.of(Limit.JAR_RISE_ACT)).isEqualTo(0.4);
        assertThat(own.with(Limit.RIPPLE, 3).of(Limit.RIPPLE)).isEqualTo(3);
    }

    @Test
    void aStringOfThreeJarsHasFourLinks() {
        StringPlan plan = AString.of(3).history().plan();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StringPlan(
                        7, plan.jarType(), 3, plan.links().subList(0, 2), NAN, NAN, NAN, LocalDate.parse("2018-01-10")))
                .withMessage("A string of 3 jars has 4 links, not 2");
    }

    /** The maker's reference stands where there is one. */
    @ParameterizedTest
    @CsvSource({
        "0.41, 0.44, 0.41, IMPEDANCE",
        "NaN, 0.44, 0.44, RESISTANCE",
        "0, 0.44, 0.44, RESISTANCE",
        "NaN, NaN, NaN, IMPEDANCE",
        "NaN, 0, NaN, IMPEDANCE"
    })
    void whatTheEstateTeachesStandsInForAMissingReference(
            double ofMaker, double learned, double reference, OhmicKind kind) {
        JarTypeFacts facts = AString.of(3)
                .withReference(ofMaker)
                .history()
                .plan()
                .jarType()
                .learned(learned, OhmicKind.RESISTANCE, 0.3, 0.09);
        assertThat(facts.referenceOhmic()).isEqualTo(Double.valueOf(reference));
        assertThat(facts.referenceKind()).isEqualTo(kind);
        assertThat(facts.logLimit()).isEqualTo(0.3);
        assertThat(facts.logLimitSpread()).isEqualTo(0.09);
    }
}
