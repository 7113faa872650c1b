package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RegressionTest {

    private static final double NAN = Double.NaN;

    /** NIST's linear regression sets; the tolerance follows each set's condition number. */
    @ParameterizedTest
    @CsvSource({
        "norris, 1, true, 1e-12",
        "pontius, 2, true, 1e-10",
        "noint1, 1, false, 1e-12",
        "wampler1, 5, true, 1e-7",
        "wampler4, 5, true, 1e-7",
        "filip, 10, true, 1e-5"
    })
    void nistPolynomialsAgree(String name, int degree, boolean intercept, double tolerance) {
        Table table = Table.read("nist/" + name + ".csv");
        double[][] design = powers(table.numbers("x1"), degree, intercept);
        check("StRD_" + name, LeastSquares.fit(design, table.numbers("y")), tolerance);
    }

    @Test
    void nistsLongleyAgrees() {
        Table table = Table.read("nist/longley.csv");
        double[] y = table.numbers("y");
        double[][] design = new double[y.length][7];
        for (int column = 0; column < 7; column++) {
            double[] x = column == 0 ? new double[0] : table.numbers("x" + column);
            for (int i = 0; i < y.length; i++) {
                design[i][column] = column == 0 ? 1 : x[i];
            }
        }
        check("StRD_longley", LeastSquares.fit(design, y), 1e-8);
    }

    private static void check(String id, LeastSquares fit, double tolerance) {
        Map<String, Double> computed = new HashMap<>();
        for (int i = 0; i < fit.coefficients().length; i++) {
            computed.put("beta" + i, fit.coefficients()[i]);
            computed.put("se" + i, fit.standardError(i));
        }
        computed.put("resid_sd", fit.residualDeviation());
        Reference.nist(id).agreesWith(computed, tolerance);
    }

    private static double[][] powers(double[] x, int degree, boolean intercept) {
        return Arrays.stream(x)
                .mapToObj(value -> DoubleStream.iterate(intercept ? 1 : value, power -> power * value)
                        .limit(intercept ? degree + 1 : degree)
                        .toArray())
                .toArray(double[][]::new);
    }

    /** Rounding leaves some 1e-9 of the deviation in the accuracy sets of 1e7 and more, as NIST means it to. */
    @ParameterizedTest
    @ValueSource(
            strings = {"Lew", "Lottery", "Mavro", "Michelso", "NumAcc1", "NumAcc2", "NumAcc3", "NumAcc4", "PiDigits"})
    void nistUnivariateSetsAgree(String name) {
        double[] y = Table.read("nist/uni_" + name + ".csv").numbers("y");
        Map<String, Double> computed = Map.of(
                "mean", Moments.mean(y),
                "sd", Moments.standardDeviation(y),
                "lag1", Moments.lagOneAutocorrelation(y));
        Reference.nist("StRDuni_" + name).agreesWith(computed, 1e-7);
    }

    @Test
    void predictionAndCrossingOfTheCarsAgree() {
        Table cars = Table.read("cars.csv");
        LeastSquares line = LeastSquares.line(cars.numbers("speed"), cars.numbers("dist"));
        Interval ten = line.predictionInterval(0.8, 1, 10);
        Interval twentyOne = line.predictionInterval(0.8, 1, 21);
        Reference.set("OLS_prediction_cars")
                .agreesWith(
                        Map.of(
                                "speed=10:fit", line.at(1, 10),
                                "speed=10:lwr", ten.lower(),
                                "speed=10:upr", ten.upper(),
                                "speed=21:fit", line.at(1, 21),
                                "speed=21:lwr", twentyOne.lower(),
                                "speed=21:upr", twentyOne.upper(),
                                "sigma", line.residualDeviation()),
                        1e-9);
        Fieller sixty = Fieller.crossing(line, 60, 0.8);
        Reference.set("Fieller_cars_mean60")
                .agreesWith(
                        Map.of(
                                "x_hat", sixty.x(),
                                "lo", sixty.interval().lower(),
                                "hi", sixty.interval().upper()),
                        1e-9);
    }

    /** At Fieller's ends the interval of the mean touches the height, by definition. */
    @Test
    void fiellersEndsAreWhereTheMeanTouchesTheHeight() {
        Table cars = Table.read("cars.csv");
        LeastSquares line = LeastSquares.line(cars.numbers("speed"), cars.numbers("dist"));
        Interval crossing = Fieller.crossing(line, 60, 0.8).interval();
        assertThat(line.meanInterval(0.8, 1, crossing.lower()).upper()).isEqualTo(60, within(1e-8));
        assertThat(line.meanInterval(0.8, 1, crossing.upper()).lower()).isEqualTo(60, within(1e-8));
    }

    /** MASS stops when residuals move by less than 1e-4; run to the end, ours differ by that much. */
    @ParameterizedTest
    @ValueSource(strings = {"huber", "bisquare"})
    void robustRegressionOfBelgianCallsAgrees(String weights) {
        Table phones = Table.read("phones.csv");
        double[][] design = Design.line(phones.numbers("year"));
        double[] calls = phones.numbers("calls");
        RobustRegression fit = weights.equals("huber")
                ? RobustRegression.huber(design, calls)
                : RobustRegression.bisquare(design, calls);
        Map<String, Double> computed =
                Map.of("(Intercept)", fit.coefficients()[0], "year", fit.coefficients()[1], "s", fit.spread());
        Reference.set("rlm_phones_" + weights).agreesWith(computed, 1e-3);
    }

    @Test
    void plainRegressionOfBelgianCallsAgrees() {
        Table phones = Table.read("phones.csv");
        LeastSquares line = LeastSquares.line(phones.numbers("year"), phones.numbers("calls"));
        Reference.set("lm_phones")
                .agreesWith(Map.of("(Intercept)", line.coefficients()[0], "year", line.coefficients()[1]), 1e-10);
    }

    /** Student's 0.975 quantile at 2 degrees of freedom is 4.302653; x = 0…3, y = 0, 2, 1, 3 worked by hand. */
    @Test
    void aCoefficientHasItsInterval() {
        LeastSquares line = LeastSquares.line(new double[] {0, 1, 2, 3}, new double[] {0, 2, 1, 3});
        double error = Math.sqrt(0.9 / 5);
        assertThat(line.standardError(1)).isEqualTo(error, within(1e-12));
        Interval slope = line.coefficientInterval(1, 0.95);
        assertThat(slope.lower()).isEqualTo(0.8 - 4.302653 * error, within(1e-6));
        assertThat(slope.upper()).isEqualTo(0.8 + 4.302653 * error, within(1e-6));
    }

    @Test
    void aWeightOfTwoCountsAsTwoEqualRows() {
        LeastSquares doubled = LeastSquares.line(new double[] {0, 1, 3, 3}, new double[] {1, 2, 2.5, 2.5});
        LeastSquares weighted = LeastSquares.weighted(
                Design.line(new double[] {0, 1, 3, 4}), new double[] {1, 2, 2.5, 9}, new double[] {1, 1, 2, 0});
        assertThat(weighted.coefficients()).containsExactly(doubled.coefficients(), within(1e-12));
        assertThat(weighted.degreesOfFreedom()).isEqualTo(1);
    }

    @Test
    void missingRowsChangeNothing() {
        LeastSquares whole = LeastSquares.line(new double[] {0, 1, 3}, new double[] {1, 2, 2.5});
        LeastSquares holed = LeastSquares.line(new double[] {0, NAN, 1, 2, 3}, new double[] {1, 5, 2, NAN, 2.5});
        assertThat(holed.coefficients()).containsExactly(whole.coefficients());
        assertThat(holed.degreesOfFreedom()).isEqualTo(1);
    }

    @Test
    void whatCannotBeDeterminedIsNaN() {
        LeastSquares oneTime = LeastSquares.line(new double[] {2, 2, 2}, new double[] {1, 2, 3});
        LeastSquares onePoint = LeastSquares.line(new double[] {2}, new double[] {1});
        LeastSquares nothing = LeastSquares.line(new double[0], new double[0]);
        assertThat(oneTime.coefficients()).containsExactly(NAN, NAN);
        assertThat(oneTime.standardError(1)).isNaN();
        assertThat(onePoint.coefficients()).containsExactly(NAN, NAN);
        assertThat(nothing.degreesOfFreedom()).isLessThan(1);
        assertThat(Fieller.crossing(oneTime, 5, 0.8).interval()).isEqualTo(Interval.UNKNOWN);
    }

    @Test
    void twoPointsGiveALineWithoutErrors() {
        LeastSquares line = LeastSquares.line(new double[] {0, 2}, new double[] {1, 5});
        assertThat(line.coefficients()).containsExactly(new double[] {1, 2}, within(1e-12));
        assertThat(line.standardError(1)).isNaN();
        assertThat(line.predictionInterval(0.8, 1, 3).lower()).isNaN();
    }

    @Test
    void aSlopeThatMayBeNoughtHasNoBoundedCrossing() {
        LeastSquares flat = LeastSquares.line(new double[] {0, 1, 2, 3}, new double[] {1, 2, 1, 2});
        assertThat(Fieller.crossing(flat, 5, 0.95).interval()).isEqualTo(Interval.EVERYTHING);
    }

    @Test
    void onlyALineHasACrossing() {
        LeastSquares mean = LeastSquares.fit(new double[][] {{1}, {1}}, new double[] {1, 2});
        assertThatIllegalArgumentException().isThrownBy(() -> Fieller.crossing(mean, 1, 0.8));
    }

    @Test
    void lengthsMustMatch() {
        assertThatIllegalArgumentException().isThrownBy(() -> LeastSquares.line(new double[2], new double[3]));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LeastSquares.weighted(new double[2][1], new double[2], new double[1]));
    }

    @Test
    void anExactRobustFitIsReturnedAsItStands() {
        RobustRegression fit =
                RobustRegression.huber(Design.line(new double[] {0, 1, 2, NAN}), new double[] {1, 1, 1, 1});
        assertThat(fit.coefficients()).containsExactly(new double[] {1, 0}, within(1e-12));
        assertThat(fit.spread()).isEqualTo(0, within(1e-12));
    }

    @Test
    void neighboursOfEqualValuesHaveNoCorrelation() {
        assertThat(Moments.lagOneAutocorrelation(new double[] {3, 3, 3})).isNaN();
    }
}
