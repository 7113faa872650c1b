package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrendTest {

    private static final double NAN = Double.NaN;

    /** Numbers to 12 digits in the reference, hence 1e-10. */
    @ParameterizedTest
    @CsvSource({
        "MK_Nile, Nile.csv, year, flow",
        "HW_tuna, HW_tuna.csv, x, y",
        "Sen1968, Sen1968.csv, t, y",
        "theil_phones, phones.csv, year, calls"
    })
    void publishedTrendsAgree(String id, String file, String x, String y) {
        Table table = Table.read(file);
        Reference.set(id).agreesWith(trend(table.numbers(x), table.numbers(y)), 1e-10);
    }

    private static Map<String, Double> trend(double[] x, double[] y) {
        MannKendall test = MannKendall.of(x, y);
        TheilSen line = TheilSen.of(x, y);
        int concordant = (x.length * (x.length - 1) / 2 + test.score()) / 2;
        Map<String, Double> computed = new HashMap<>();
        computed.put("S", (double) test.score());
        computed.put("VarS", test.variance());
        computed.put("Z", test.z());
        computed.put("p_normal", test.pValue());
        computed.put("tau_b", test.tau());
        computed.put("tau", test.tau());
        computed.put("T", (double) concordant);
        computed.put("p_exact_greater", KendallExact.upperTail(test.score(), x.length));
        computed.put("sen_slope", line.slope());
        computed.put("intercept_median_resid", line.intercept());
        computed.put("intercept_conover", line.conoverIntercept());
        computed.put("N_slopes", (double) line.slopes().length);
        computed.put("slope_order4", line.slopeInterval(0.95).lower());
        computed.put("slope_order18", line.slopeInterval(0.95).upper());
        return computed;
    }

    @Test
    void theLineRunsThroughItsHeights() {
        TheilSen line = TheilSen.of(new double[] {0, 1, 2, 3}, new double[] {1, 3, 5, 70});
        assertThat(line.at(10)).isEqualTo(line.intercept() + 10 * line.slope());
    }

    @Test
    void tooFewPairsForTheLevelExcludeNothing() {
        TheilSen line = TheilSen.of(new double[] {0, 1, 2}, new double[] {1, 3, 4});
        assertThat(line.slopeInterval(0.95)).isEqualTo(Interval.EVERYTHING);
        assertThat(line.slopeInterval(0.2).width()).isFinite();
    }

    @Test
    void aHigherLevelNeverGivesANarrowerInterval() {
        Table nile = Table.read("Nile.csv");
        TheilSen line = TheilSen.of(nile.numbers("year"), nile.numbers("flow"));
        Interval narrow = line.slopeInterval(0.8);
        Interval wide = line.slopeInterval(0.95);
        assertThat(wide.lower()).isLessThan(narrow.lower());
        assertThat(wide.upper()).isGreaterThan(narrow.upper());
        assertThat(narrow.contains(line.slope())).isTrue();
    }

    @Test
    void missingPairsChangeNothing() {
        double[] x = {0, 1, 2, 3, NAN, 5};
        double[] y = {2, NAN, 3, 9, 4, 5};
        assertThat(TheilSen.of(x, y).slope())
                .isEqualTo(TheilSen.of(new double[] {0, 2, 3, 5}, new double[] {2, 3, 9, 5})
                        .slope());
        assertThat(MannKendall.of(x, y))
                .isEqualTo(MannKendall.of(new double[] {0, 2, 3, 5}, new double[] {2, 3, 9, 5}));
    }

    @Test
    void oneTimeHasNoTrend() {
        TheilSen line = TheilSen.of(new double[] {1, 1}, new double[] {2, 3});
        assertThat(line.slope()).isNaN();
        assertThat(line.slopeInterval(0.8)).isEqualTo(Interval.UNKNOWN);
        assertThat(MannKendall.of(new double[] {1, 1}, new double[] {2, 3}))
                .isEqualTo(new MannKendall(0, 0, 0, 1, NAN));
        assertThat(MannKendall.of(new double[0], new double[0])).isEqualTo(new MannKendall(0, 0, 0, 1, NAN));
    }

    @Test
    void equalValuesHaveASlopeOfNought() {
        assertThat(TheilSen.of(new double[] {1, 2, 3}, new double[] {4, 4, 4}).slope())
                .isZero();
    }

    /** Both variables tied, (1,1)(1,2)(2,2)(2,3): pairs by hand S = 3; variance by Kendall's formula 104/18 - 5·... */
    @Test
    void tiesInBothVariablesEnterTheVariance() {
        MannKendall test = MannKendall.of(new double[] {1, 1, 2, 2}, new double[] {1, 2, 2, 3});
        assertThat(test.score()).isEqualTo(3);
        double free = (4 * 3 * 13 - 2 * 18 - 18) / 18.0;
        double pairs = 4.0 * 2 / (2 * 4 * 3);
        assertThat(test.variance()).isEqualTo(free + pairs, within(1e-12));
        assertThat(test.tau()).isEqualTo(3 / Math.sqrt(4 * 5), within(1e-12));
    }

    /**
     * Threefold ties in both variables: Kendall's variance must be that of S over all 720 orders of y, counted out here.
     */
    @Test
    void theVarianceIsThatOfAllOrders() {
        double[] x = {1, 1, 1, 2, 2, 3};
        double[] y = {5, 5, 5, 5, 7, 7};
        List<Double> squares = new ArrayList<>();
        addSquaredScores(x, y, 0, squares);
        double counted = squares.stream().mapToDouble(s -> s).average().orElseThrow();
        assertThat(squares).hasSize(720);
        assertThat(MannKendall.of(x, y).variance()).isEqualTo(counted, within(1e-9));
    }

    private static void addSquaredScores(double[] x, double[] y, int from, List<Double> squares) {
        if (from == y.length) {
            squares.add(Math.pow(MannKendall.of(x, y).score(), 2));
        }
        for (int i = from; i < y.length; i++) {
            double[] swapped = y.clone();
            swapped[from] = y[i];
            swapped[i] = y[from];
            addSquaredScores(x, swapped, from + 1, squares);
        }
    }

    @Test
    void anIntervalHoldsItsEnds() {
        Interval interval = new Interval(1, 3);
        assertThat(interval.contains(1)).isTrue();
        assertThat(interval.contains(3)).isTrue();
        assertThat(interval.contains(0.99)).isFalse();
        assertThat(interval.contains(3.01)).isFalse();
        assertThat(interval.contains(NAN)).isFalse();
        assertThat(interval.width()).isEqualTo(2);
    }

    @Test
    void lengthsMustMatch() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TheilSen.of(new double[2], new double[3]))
                .withMessageContaining("2")
                .withMessageContaining("3");
    }

    /** Four values: 24 orderings, 1 with S = 6, 3 with S = 4, by hand. */
    @Test
    void theExactTailCountsOrderings() {
        assertThat(KendallExact.upperTail(6, 4)).isEqualTo(1 / 24.0, within(1e-15));
        assertThat(KendallExact.upperTail(4, 4)).isEqualTo(4 / 24.0, within(1e-15));
        assertThat(KendallExact.upperTail(7, 4)).isZero();
        assertThat(KendallExact.upperTail(-6, 4)).isEqualTo(1, within(1e-15));
        assertThat(KendallExact.upperTail(-9, 4)).isEqualTo(1, within(1e-15));
    }
}
