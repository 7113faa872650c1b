package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.analysis.differentiation.DSFactory;
import org.hipparchus.analysis.differentiation.DerivativeStructure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class LifeRegressionTest {

    private static final double FOREVER = Double.POSITIVE_INFINITY;

    /** The reference's optimiser stopped at about 1e-7 of the parameters. */
    @ParameterizedTest
    @CsvSource({"bearingcage, hours", "fan, hours", "lzbearing, megacycles", "shockabsorber, miles"})
    void lifeTestsOfTheTextbooksAgree(String name, String time) {
        Table table = Table.read(name + ".csv");
        double[] times = table.numbers(time);
        boolean[] failed = new boolean[times.length];
        double[] counts = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            Map<String, String> fields = table.rows().get(i).getFieldsAsMap();
            failed[i] = fields.getOrDefault("event", "Failed").startsWith("Fail");
            counts[i] = Double.parseDouble(fields.getOrDefault("count", "1"));
        }
        Lifetimes lifetimes = Lifetimes.rightCensored(times, failed, counts);
        Map<String, Double> computed = new HashMap<>(named("weibull", LifeRegression.fit(LifeLaw.WEIBULL, lifetimes)));
        computed.putAll(named("lognormal", LifeRegression.fit(LifeLaw.LOGNORMAL, lifetimes)));
        Reference.set(name).agreesWith(computed, 1e-5);
    }

    private static Map<String, Double> named(String law, LifeRegression fit) {
        return Map.of(
                law + ":mu", fit.coefficients()[0],
                law + ":sigma", fit.sigma(),
                law + ":loglik", fit.logLikelihood(),
                law + ":se_mu", fit.standardError(0),
                law + ":se_sigma", fit.standardError(1),
                law + ":eta", fit.scale(),
                law + ":beta", fit.shape(),
                law + ":B10", fit.quantile(0.1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"gaas_pseudo_origin", "gaas_pseudo_published"})
    void pseudoFailureTimesOfTheLasersAgree(String id) {
        String quantity = id.substring("gaas_".length());
        double[] times = IntStream.rangeClosed(101, 115)
                .mapToDouble(unit -> Reference.set("gaas").value("unit" + unit + ":" + quantity))
                .toArray();
        Lifetimes all = new Lifetimes(
                times, times, IntStream.range(0, 15).mapToDouble(i -> 1).toArray());
        Map<String, Double> computed = new HashMap<>(named("weibull", LifeRegression.fit(LifeLaw.WEIBULL, all)));
        computed.putAll(named("lognormal", LifeRegression.fit(LifeLaw.LOGNORMAL, all)));
        Reference.set(id).agreesWith(computed, 1e-5);
    }

    @ParameterizedTest
    @CsvSource({
        "weibull_aml, aml.csv, time, status, x=Nonmaintained, intercept, xNonmaintained",
        "weibull_freireich, freireich_gehan.csv, time, cens, treat=control, intercept, treatcontrol",
        "weibull_ovarian, ovarian.csv, futime, fustat, '', intercept, ''",
        "weibull_ovarian_x, ovarian.csv, futime, fustat, ecog.ps rx, (Intercept), ecog.ps rx",
        "weibull_rats, rats.csv, time, status, rx, (Intercept), rx"
    })
    void weibullRegressionsOfRsSurvivalPackageAgree(
            String id, String file, String time, String status, String columns, String intercept, String names) {
        Table table = Table.read(file);
        double[] marks = table.numbers(status);
        boolean[] failed = new boolean[marks.length];
        IntStream.range(0, marks.length).forEach(i -> failed[i] = marks[i] == 1);
        String[] words = columns.isEmpty() ? new String[0] : columns.split(" ");
        double[][] design = design(table, words);
        LifeRegression fit =
                LifeRegression.fit(LifeLaw.WEIBULL, Lifetimes.rightCensored(table.numbers(time), failed), design);
        Map<String, Double> computed = new HashMap<>(
                Map.of(intercept, fit.coefficients()[0], "scale", fit.sigma(), "loglik", fit.logLikelihood()));
        for (int j = 0; j < words.length; j++) {
            computed.put(names.split(" ")[j], fit.coefficients()[j + 1]);
        }
        Reference.set(id).agreesWith(computed, 1e-6);
    }

    private static double[][] design(Table table, String[] columns) {
        double[][] explaining = Stream.of(columns)
                .map(column -> column.contains("=") ? indicator(table, column.split("=")) : table.numbers(column))
                .toArray(double[][]::new);
        return IntStream.range(0, table.rows().size())
                .mapToObj(i -> IntStream.rangeClosed(0, columns.length)
                        .mapToDouble(j -> j == 0 ? 1 : explaining[j - 1][i])
                        .toArray())
                .toArray(double[][]::new);
    }

    private static double[] indicator(Table table, String[] columnAndWord) {
        return Stream.of(table.words(columnAndWord[0]))
                .mapToDouble(word -> word.equals(columnAndWord[1]) ? 1 : 0)
                .toArray();
    }

    /** Narrow intervals around exact times must give the exact fit, since the likelihood is continuous. */
    @ParameterizedTest
    @EnumSource(LifeLaw.class)
    void narrowIntervalsFitLikeExactTimes(LifeLaw law) {
        double[] times = Table.read("lzbearing.csv").numbers("megacycles");
        double[] ones = IntStream.range(0, times.length).mapToDouble(i -> 1).toArray();
        double[] early = IntStream.range(0, times.length)
                .mapToDouble(i -> times[i] - 0.01)
                .toArray();
        double[] late = IntStream.range(0, times.length)
                .mapToDouble(i -> times[i] + 0.01)
                .toArray();
        LifeRegression exact = LifeRegression.fit(law, new Lifetimes(times, times, ones));
        LifeRegression ranges = LifeRegression.fit(law, new Lifetimes(early, late, ones));
        assertThat(ranges.coefficients()[0]).isEqualTo(exact.coefficients()[0], within(1e-5));
        assertThat(ranges.sigma()).isEqualTo(exact.sigma(), within(1e-5));
        assertThat(ranges.standardError(1)).isEqualTo(exact.standardError(1), within(1e-4));
    }

    /**
     * Half dead when first looked at (time 1) and a quarter alive at time 4 are met exactly by two parameters: the law
     * must give just these shares. By hand from the Weibull law, and the same for the lognormal.
     */
    @ParameterizedTest
    @EnumSource(LifeLaw.class)
    void leftAndRightCensoredSharesAreMetExactly(LifeLaw law) {
        Lifetimes times =
                new Lifetimes(new double[] {0, 1, 4}, new double[] {1, 4, FOREVER}, new double[] {50, 25, 25});
        LifeRegression fit = LifeRegression.fit(law, times);
        assertThat(fit.failedBy(1)).isEqualTo(0.5, within(1e-7));
        assertThat(fit.failedBy(4)).isEqualTo(0.75, within(1e-7));
        assertThat(fit.quantile(0.75)).isEqualTo(4, within(1e-6));
        assertThat(fit.logLikelihood()).isEqualTo(50 * Math.log(0.5) + 50 * Math.log(0.25), within(1e-7));
    }

    /** exp(ln t ± 1.644854·se), se by hand from the covariance for the quantile at which ln(-ln(1-p)) = 0. */
    @Test
    void quantilesAndSigmaHaveIntervals() {
        double[] times = Table.read("lzbearing.csv").numbers("megacycles");
        double[] ones = IntStream.range(0, times.length).mapToDouble(i -> 1).toArray();
        LifeRegression fit = LifeRegression.fit(LifeLaw.WEIBULL, new Lifetimes(times, times, ones));
        Interval eta = fit.quantileInterval(1 - Math.exp(-1), 0.9);
        assertThat(eta.lower()).isEqualTo(81.874559 * Math.exp(-1.644854 * 0.10505005), within(1e-3));
        assertThat(eta.upper()).isEqualTo(81.874559 * Math.exp(1.644854 * 0.10505005), within(1e-3));
        Interval sigma = fit.sigmaInterval(0.9);
        assertThat(sigma.lower()).isEqualTo(0.475772 * Math.exp(-1.644854 * 0.0743946 / 0.475772), within(1e-5));
        assertThat(sigma.upper()).isEqualTo(0.475772 * Math.exp(1.644854 * 0.0743946 / 0.475772), within(1e-5));
        double covariance = fit.covariance()[0][1];
        double z = Math.log(-Math.log(0.9));
        double error = Math.sqrt(0.10505005 * 0.10505005 + 2 * z * covariance + z * z * 0.0743946 * 0.0743946);
        assertThat(fit.quantileInterval(0.1, 0.9).upper())
                .isEqualTo(28.0650890 * Math.exp(1.644854 * error), within(1e-3));
        assertThat(covariance).isNegative();
    }

    @Test
    void aRowOfTheDesignShiftsTheQuantile() {
        LifeRegression fit = new LifeRegression(
                LifeLaw.LOGNORMAL, new double[] {1, 0.5}, 0.3, 0, new double[][] {{1, 0, 0}, {0, 4, 0}, {0, 0, 9}});
        assertThat(fit.quantile(0.5, 1, 2)).isEqualTo(Math.exp(2), within(1e-9));
        assertThat(fit.failedBy(Math.exp(2), 1, 2)).isEqualTo(0.5, within(1e-12));
        assertThat(fit.quantileInterval(0.5, 0.9, 1, 2).upper())
                .isEqualTo(Math.exp(2 + 1.6448536 * Math.sqrt(17)), within(1e-3));
    }

    @ParameterizedTest
    @EnumSource(LifeLaw.class)
    void whatTheDataCannotSayIsNaN(LifeLaw law) {
        double[] one = {1, 1};
        Lifetimes noFailure = Lifetimes.rightCensored(new double[] {5, 9}, new boolean[2]);
        Lifetimes allAtBirth = new Lifetimes(new double[] {0, 0}, new double[] {3, 4}, one);
        Lifetimes oneTime = new Lifetimes(new double[] {5, 5}, new double[] {5, 5}, one);
        Lifetimes onlyCounted = new Lifetimes(new double[] {5, 7}, new double[] {5, FOREVER}, new double[] {0, 3});
        Lifetimes none = new Lifetimes(new double[0], new double[0], new double[0]);
        assertThat(Stream.of(noFailure, allAtBirth, oneTime, onlyCounted, none)).allSatisfy(times -> {
            LifeRegression fit = LifeRegression.fit(law, times);
            assertThat(fit.determined()).isFalse();
            assertThat(fit.logLikelihood()).isNaN();
        });
    }

    /** ln(1 - Φ(40)) = -804.608442 and the hazard 40.0249688, by Mills' continued fraction. */
    @Test
    void aLognormalSurvivorFarOutStillCounts() {
        DerivativeStructure far = LifeLaw.LOGNORMAL.logSurvival(new DSFactory(1, 2).variable(0, 40));
        double mills = 1 / (40 + 1 / (40 + 2 / (40 + 3 / (40 + 4 / 40.0))));
        double density = -800 - Math.log(2 * Math.PI) / 2;
        assertThat(far.getValue()).isEqualTo(density + Math.log(mills), within(1e-9));
        assertThat(far.getPartialDerivative(1)).isEqualTo(-1 / mills, within(1e-6));
        assertThat(far.getPartialDerivative(2)).isEqualTo(-(1 / mills - 40) / mills, within(1e-5));
    }

    @Test
    void dependentColumnsCannotBeToldApart() {
        double[] times = {3, 5, 8, 9};
        double[][] design = {{1, 2}, {1, 2}, {1, 2}, {1, 2}};
        LifeRegression fit = LifeRegression.fit(
                LifeLaw.WEIBULL, Lifetimes.rightCensored(times, new boolean[] {true, true, false, true}), design);
        assertThat(fit.determined()).isFalse();
        assertThat(fit.coefficients()).hasSize(2);
    }

    @Test
    void impossibleRangesAreRefusedWithTheirPlace() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Lifetimes(new double[] {1, 5}, new double[] {2, 4}, new double[] {1, 1}))
                .withMessageContaining("lifetime 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Lifetimes(new double[] {-1}, new double[] {2}, new double[] {1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Lifetimes(new double[] {0}, new double[] {0}, new double[] {1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Lifetimes(new double[] {1}, new double[] {2}, new double[] {-1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Lifetimes(new double[] {1}, new double[2], new double[] {1}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LifeRegression.fit(
                        LifeLaw.WEIBULL,
                        new Lifetimes(new double[] {1}, new double[] {2}, new double[] {1}),
                        new double[2][1]));
    }
}
