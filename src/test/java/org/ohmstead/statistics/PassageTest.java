package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PassageTest {

    private static final double NAN = Double.NaN;

    /** Every number behind an equals sign or a "<=" of a quantity's name, in order. */
    private static double[] numbersIn(String quantity) {
        Matcher found = Pattern.compile("=(-?[0-9.e-]+)").matcher(quantity);
        return found.results()
                .mapToDouble(match -> Double.parseDouble(match.group(1)))
                .toArray();
    }

    @Test
    void closedFormsOfTheFirstPassageAgree() {
        Reference set = Reference.set("IG_first_passage");
        Map<String, Double> computed = new HashMap<>();
        for (Reference.Row row : set.rows()) {
            double[] n = numbersIn(row.quantity());
            FirstPassage passage = new FirstPassage(n[4] - n[1], n[2], n[3] * n[3]);
            computed.put(row.quantity(), passage.cdf(n[0]));
        }
        set.agreesWith(computed, 1e-10);
    }

    @Test
    void crossingsOfNormalPathsAgree() {
        Reference set = Reference.set("normal_path_crossing");
        Map<String, Double> computed = new HashMap<>();
        for (Reference.Row row : set.rows()) {
            double[] n = numbersIn(row.quantity());
            NormalPath path = new NormalPath(n[0], n[1], n[2], n[3], n[4]);
            computed.put(row.quantity(), path.chanceAbove(n[5], n[6]));
        }
        set.agreesWith(computed, 1e-9);
    }

    /** The lasers' paths, one unit after the other. */
    private record Laser(double[] hours, double[] increase) {

        static Laser unit(int unit) {
            Table own = Table.read("gaaslaser.csv").where("unit", String.valueOf(unit));
            return new Laser(own.numbers("hours"), own.numbers("increase"));
        }
    }

    /** Published times are rounded to whole hours, hence 2e-4 for them; the others agree to 1e-9. */
    @Test
    void pseudoFailureTimesOfFifteenLasersAgree() {
        Map<String, Double> computed = new HashMap<>();
        for (int unit = 101; unit <= 115; unit++) {
            Laser laser = Laser.unit(unit);
            String name = "unit" + unit + ":";
            double byLine = LimitTime.byLine(laser.hours(), laser.increase(), 10);
            computed.put(name + "slope_origin", LimitTime.slopeThroughOrigin(laser.hours(), laser.increase()));
            computed.put(name + "pseudo_origin", LimitTime.throughOrigin(laser.hours(), laser.increase(), 10));
            computed.put(name + "pseudo_ols", byLine);
            computed.put(name + "pseudo_published", (double) Math.round(byLine));
            computed.put(name + "interp_crossing", LimitTime.byInterpolation(laser.hours(), laser.increase(), 10));
        }
        Reference.set("gaas").agreesWith(computed, 1e-9);
    }

    @Test
    void processesFittedToTheLasersAgree() {
        Table table = Table.read("gaaslaser.csv");
        double[] hours = table.numbers("hours");
        double[] increase = table.numbers("increase");
        int steps = hours.length - 1;
        double[] durations = IntStream.range(0, steps)
                .mapToDouble(i -> hours[i + 1] - hours[i])
                .toArray();
        double[] gains = IntStream.range(0, steps)
                .mapToDouble(i -> increase[i + 1] - increase[i])
                .toArray();
        WienerProcess wiener = WienerProcess.fit(durations, gains);
        FirstPassage ten = wiener.passage(10);
        Map<String, Double> computed = new HashMap<>(
                Map.of("drift_per_h", wiener.drift(), "sigma2_per_h", wiener.variance(), "mean_FPT_10", ten.mean()));
        IntStream.rangeClosed(3, 6).forEach(k -> computed.put("F(" + k + "000)", ten.cdf(k * 1000.0)));
        Reference.set("gaas_wiener").agreesWith(computed, 1e-9);
        InverseGaussianProcess rising = InverseGaussianProcess.fit(durations, gains);
        Reference.set("gaas_IGprocess")
                .agreesWith(Map.of("mu_per_h", rising.drift(), "lambda_per_h2", rising.shape()), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 0.1, 0.5, 0.9, 0.999})
    void quantilesInvertTheShareThatHasPassed(double share) {
        FirstPassage passage = new FirstPassage(0.3, 0.05, 0.01);
        assertThat(passage.cdf(passage.quantile(share))).isEqualTo(share, within(1e-9 * share));
        FirstPassage still = new FirstPassage(0.3, 0, 0.01);
        assertThat(still.cdf(still.quantile(share))).isEqualTo(share, within(1e-9 * share));
    }

    /** With a falling drift exp(2·drift·distance/variance) ever pass: e^-1 here. */
    @Test
    void aFallingMotionMayNeverPass() {
        FirstPassage falling = new FirstPassage(0.5, -0.1, 0.1);
        assertThat(falling.everShare()).isEqualTo(Math.exp(-1), within(1e-12));
        assertThat(falling.cdf(Double.POSITIVE_INFINITY)).isEqualTo(Math.exp(-1), within(1e-12));
        assertThat(falling.cdf(1e6)).isEqualTo(Math.exp(-1), within(1e-9));
        assertThat(falling.quantile(0.4)).isInfinite();
        double nearlyAll = Math.nextDown(falling.everShare());
        assertThat(falling.cdf(falling.quantile(nearlyAll))).isEqualTo(nearlyAll, within(1e-12));
        assertThat(falling.cdf(falling.quantile(0.3))).isEqualTo(0.3, within(1e-9));
        assertThat(falling.mean()).isInfinite();
    }

    @Test
    void whatHasPassedHasPassed() {
        for (double distance : new double[] {0, -1}) {
            FirstPassage passed = new FirstPassage(distance, -0.1, 0.1);
            assertThat(passed.cdf(0)).isEqualTo(1);
            assertThat(passed.everShare()).isEqualTo(1);
            assertThat(passed.quantile(0.5)).isZero();
            assertThat(passed.mean()).isZero();
        }
    }

    @Test
    void withoutVarianceThePassageIsCertain() {
        FirstPassage sure = new FirstPassage(2, 0.5, 0);
        assertThat(sure.cdf(3.99)).isZero();
        assertThat(sure.cdf(4)).isEqualTo(1);
        assertThat(sure.quantile(0.1)).isEqualTo(4);
        FirstPassage never = new FirstPassage(2, 0, 0);
        assertThat(never.cdf(1e9)).isZero();
        assertThat(never.everShare()).isZero();
        assertThat(never.quantile(0.1)).isInfinite();
    }

    @Test
    void nothingHasPassedAtTheStart() {
        FirstPassage passage = new FirstPassage(1, 1, 1);
        assertThat(passage.cdf(0)).isZero();
        assertThat(passage.cdf(-1)).isZero();
        assertThat(passage.cdf(NAN)).isNaN();
        assertThat(passage.cdf(Double.POSITIVE_INFINITY)).isEqualTo(1);
    }

    /**
     * At drift·time = distance the mirrored term is e^(2a)(1 - Φ(2√a)) with a = distance·drift/variance, which Mills' series
     * gives for large a. The two ways of working it out meet at z = 30, that is a = 225.
     */
    @ParameterizedTest
    @ValueSource(doubles = {224.9, 225.1, 2000, 1e6})
    void aLargeExponentDoesNotOverflow(double a) {
        double series = 1 - 1 / (4 * a) + 3 / (16 * a * a) - 15 / (64 * a * a * a);
        double expected = 0.5 + series / (2 * Math.sqrt(2 * Math.PI * a));
        assertThat(new FirstPassage(1, 1, 1 / a).cdf(1)).isEqualTo(expected, within(1e-11));
    }

    @Test
    void aPathWithoutVarianceIsAboveOrBelow() {
        NormalPath sure = new NormalPath(1, 2, 0, 0, 0);
        assertThat(sure.chanceAbove(5, 1.99)).isZero();
        assertThat(sure.chanceAbove(5, 2)).isEqualTo(1);
        assertThat(sure.mean(3)).isEqualTo(7);
        assertThat(new NormalPath(0, 0, 1, 3, 0.5).variance(2)).isEqualTo(1 + 2 + 12);
    }

    @Test
    void missingAndInstantIncrementsAreSkipped() {
        double[] durations = {1, NAN, 2, 0, 1};
        double[] gains = {1, 5, 3, 9, NAN};
        WienerProcess wiener = WienerProcess.fit(durations, gains);
        assertThat(wiener.drift()).isEqualTo(4 / 3.0, within(1e-12));
        assertThat(wiener.variance()).isEqualTo((1 / 9.0 + 1 / 9.0 / 2) / 2, within(1e-12));
        assertThat(WienerProcess.fit(new double[0], new double[0]).drift()).isNaN();
        assertThat(InverseGaussianProcess.fit(durations, gains).drift()).isEqualTo(4 / 3.0, within(1e-12));
    }

    @Test
    void aFallingIncrementHasNoInverseGaussianShape() {
        InverseGaussianProcess fit = InverseGaussianProcess.fit(new double[] {1, 1, 1}, new double[] {1, 2, -0.5});
        assertThat(fit.shape()).isNaN();
        assertThat(InverseGaussianProcess.fit(new double[] {1, 1}, new double[] {1, 0})
                        .shape())
                .isNaN();
    }

    @Test
    void aPathThatDoesNotRiseNeverReachesTheLimit() {
        double[] times = {0, 1, 2};
        assertThat(LimitTime.byLine(times, new double[] {3, 2, 1}, 10)).isInfinite();
        assertThat(LimitTime.byLine(times, new double[] {3, NAN, NAN}, 10)).isNaN();
        assertThat(LimitTime.throughOrigin(times, new double[] {0, -1, -2}, 10)).isInfinite();
        assertThat(LimitTime.throughOrigin(times, new double[3], 10)).isInfinite();
        assertThat(LimitTime.byInterpolation(times, new double[] {3, 2, 1}, 10)).isNaN();
    }

    @Test
    void aReadingOnTheLimitHasReachedIt() {
        double[] times = {0, 1, 2, 4};
        assertThat(LimitTime.byInterpolation(times, new double[] {10, 11, 12, 13}, 10))
                .isZero();
        assertThat(LimitTime.byInterpolation(times, new double[] {8, 9, 10, 13}, 10))
                .isEqualTo(2);
        assertThat(LimitTime.byInterpolation(times, new double[] {8, NAN, 9, 11}, 10))
                .isEqualTo(3);
    }
}
