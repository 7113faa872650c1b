package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against R's package spc, which solves the same integral equations, to 1e-6 of each number. */
class RunLengthTest {

    private static final double TOLERANCE = 1e-6;

    @ParameterizedTest
    @CsvSource({"0.5, 4", "0.5, 5"})
    void cumulativeSumsRunAsLongAsTabled(double allowance, double limit) {
        String name = "k" + allowance + "_h" + (int) limit;
        Reference oneSided = Reference.set("CUSUM1_" + name);
        Reference twoSided = Reference.set("CUSUM2_" + name);
        Map<String, Double> one = new HashMap<>();
        Map<String, Double> two = new HashMap<>();
        for (Reference.Row row : oneSided.rows()) {
            one.put(row.quantity(), RunLength.cusum(allowance, limit, shift(row)));
            two.put(row.quantity(), RunLength.twoSidedCusum(allowance, limit, shift(row)));
        }
        oneSided.agreesWith(one, TOLERANCE);
        twoSided.agreesWith(two, TOLERANCE);
    }

    @ParameterizedTest
    @CsvSource({"0.1, 2.814", "0.2, 2.962", "0.25, 2.998", "0.4, 3.054", "0.5, 3.071"})
    void movingAveragesRunAsLongAsTabled(double weight, double limit) {
        Reference set = Reference.set("EWMA2_l" + weight + "_L" + limit);
        Map<String, Double> computed = new HashMap<>();
        for (Reference.Row row : set.rows()) {
            computed.put(row.quantity(), RunLength.ewma(weight, limit, shift(row)));
        }
        set.agreesWith(computed, TOLERANCE);
    }

    @Test
    void aRunTooLongToResolveIsEndless() {
        assertThat(RunLength.cusum(0.5, 5, -3)).isInfinite();
        assertThat(RunLength.ewma(0.2, 12, 0)).isInfinite();
    }

    /** Without memory (λ = 1) the chart is Shewhart's: 1/(2Φ(-3)) = 370.398 readings, from tables. */
    @Test
    void aMovingAverageWithoutMemoryIsAShewhartChart() {
        assertThat(RunLength.ewma(1, 3, 0)).isEqualTo(370.398, within(1e-3));
    }

    private static double shift(Reference.Row row) {
        String quantity = row.quantity();
        return Double.parseDouble(quantity.substring(quantity.indexOf('=') + 1, quantity.length() - 1));
    }
}
