package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RobustTest {

    private static final double NAN = Double.NaN;

    /** MASS iterates the Huber centre to 1e-6 of the spread, hence the tolerance; the rest agrees to 1e-11. */
    @ParameterizedTest
    @ValueSource(strings = {"chem", "abbey"})
    void venablesAndRipleysExamplesAgree(String name) {
        double[] ppm = Table.read(name + ".csv").numbers("ppm");
        Huber.Estimate two = Huber.proposalTwo(ppm);
        Map<String, Double> computed = Map.ofEntries(
                Map.entry("mean", Moments.mean(ppm)),
                Map.entry("median", Quantiles.median(ppm)),
                Map.entry("mad_1.4826", Spread.mad(ppm)),
                Map.entry("Sn", Spread.sn(ppm)),
                Map.entry("Qn", Spread.qn(ppm)),
                Map.entry("s_Sn_raw", Spread.rawSn(ppm)),
                Map.entry("s_Qn_raw", Spread.rawQn(ppm)),
                Map.entry("huber_mu_k1.5", Huber.location(ppm)),
                Map.entry("huber_s", Spread.mad(ppm)),
                Map.entry("hubers_mu", two.centre()),
                Map.entry("hubers_s", two.spread()));
        Reference.set("robust_" + name).agreesWith(computed, 2e-6);
    }

    @Test
    void theExamplesOfTheRobustbaseHelpPagesAgree() {
        double[] tenths = IntStream.rangeClosed(1, 10).asDoubleStream().toArray();
        Reference.set("robust_1to10")
                .agreesWith(Map.of("mad", Spread.mad(tenths), "Sn", Spread.sn(tenths), "Qn", Spread.qn(tenths)), 1e-10);
        tenths[9] = 1000;
        Reference.set("robust_1to9_1000").agreesWith(Map.of("Sn", Spread.sn(tenths), "Qn", Spread.qn(tenths)), 1e-10);
    }

    /** Type 7 by its definition: h = (n - 1)p, worked by hand. */
    @ParameterizedTest
    @CsvSource({"0, 1", "0.25, 1.75", "0.5, 2.5", "0.9, 3.7", "1, 4"})
    void quantilesInterpolateBetweenOrderStatistics(double share, double expected) {
        assertThat(Quantiles.quantile(new double[] {4, NAN, 1, 3, 2}, share)).isEqualTo(expected, within(1e-12));
    }

    @Test
    void aShareOutsideNoughtToOneIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Quantiles.quantile(new double[] {1}, 1.01));
        assertThatIllegalArgumentException().isThrownBy(() -> Quantiles.quantile(new double[] {1}, -0.01));
        assertThatIllegalArgumentException().isThrownBy(() -> Quantiles.quantile(new double[] {1}, NAN));
    }

    @Test
    void nothingGivesNaN() {
        double[] nothing = {NAN};
        assertThat(Quantiles.median(nothing)).isNaN();
        assertThat(Spread.mad(nothing)).isNaN();
        assertThat(Spread.sn(nothing)).isNaN();
        assertThat(Spread.qn(nothing)).isNaN();
        assertThat(Huber.location(nothing)).isNaN();
        assertThat(Huber.proposalTwo(nothing).centre()).isNaN();
        assertThat(Moments.mean(nothing)).isNaN();
    }

    @Test
    void oneValueHasNoSpread() {
        double[] one = {NAN, 7};
        assertThat(Quantiles.median(one)).isEqualTo(7);
        assertThat(Spread.mad(one)).isZero();
        assertThat(Spread.sn(one)).isZero();
        assertThat(Spread.qn(one)).isZero();
        assertThat(Huber.location(one)).isEqualTo(7);
        assertThat(Huber.location(one, 1, 1.5)).isEqualTo(7);
        assertThat(Huber.proposalTwo(one)).isEqualTo(new Huber.Estimate(7, 0));
        assertThat(Moments.standardDeviation(one)).isNaN();
    }

    @Test
    void missingValuesChangeNothing() {
        double[] whole = {1, 2, 4, 7, 11, 30};
        double[] holed = {1, NAN, 2, 4, 7, NAN, 11, 30};
        assertThat(Spread.sn(holed)).isEqualTo(Spread.sn(whole));
        assertThat(Spread.qn(holed)).isEqualTo(Spread.qn(whole));
        assertThat(Huber.location(holed)).isEqualTo(Huber.location(whole));
        assertThat(Huber.proposalTwo(holed)).isEqualTo(Huber.proposalTwo(whole));
        assertThat(Moments.standardDeviation(holed)).isEqualTo(Moments.standardDeviation(whole));
    }

    @Test
    void theCentreIsTheMeanWhereNothingIsFarOut() {
        assertThat(Huber.location(new double[] {1, 2, 3, 6}, 10, 1.5)).isEqualTo(3, within(1e-9));
    }

    /** One value of four clipped at centre + 1: c = (0 + 1 + 2 + c + 1)/4, so c = 4/3, by hand. */
    @Test
    void aFarValuePullsOnlyAsFarAsTheBound() {
        assertThat(Huber.location(new double[] {0, 1, 2, 1e6}, 1, 2)).isEqualTo(5 / 3.0, within(1e-8));
    }

    /** Factors for 2 to 12 values: tables of Croux and Rousseeuw (1992) and robustbase, through the sample 0, 1, 2, … */
    @ParameterizedTest
    @CsvSource({
        "2, 0.743, 0.399356", "3, 1.851, 0.99365", "4, 0.954, 0.51321", "5, 1.351, 0.84401", "6, 0.993, 0.61220",
        "7, 1.198, 0.85877", "8, 1.005, 0.66993", "9, 1.131, 0.87344", "10, 1, 0.72014", "11, 1.0891089, 0.88906",
        "12, 1, 0.75743"
    })
    void smallSamplesHaveTheirOwnFactors(int n, double snFactor, double qnFactor) {
        double[] values = IntStream.range(0, n).asDoubleStream().toArray();
        assertThat(Spread.sn(values)).isEqualTo(1.1926 * snFactor * Spread.rawSn(values), within(1e-6));
        assertThat(Spread.qn(values)).isEqualTo(2.21914 * qnFactor * Spread.rawQn(values), within(1e-9));
    }

    /** robustbase: even 3.67561, 1.9654, 6.987, -77; odd 1.60188, -2.1284, -5.172; checked at n = 13 by hand. */
    @Test
    void anOddLargerSampleHasItsFactor() {
        double[] values = IntStream.range(0, 13).asDoubleStream().toArray();
        double excess = 1.60188 - 2.1284 / 13 - 5.172 / 169;
        assertThat(Spread.qn(values)).isEqualTo(2.21914 / (1 + excess / 13) * Spread.rawQn(values), within(1e-12));
    }

    @Test
    void inputsAreLeftAsTheyWere() {
        double[] values = {3, 1, 2, NAN};
        double[] before = values.clone();
        Spread.mad(values);
        Spread.sn(values);
        Quantiles.median(values);
        assertThat(Arrays.equals(values, before)).isTrue();
    }
}
