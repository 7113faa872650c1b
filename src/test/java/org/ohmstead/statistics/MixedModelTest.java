package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.ohmstead.statistics.MixedModel.Criterion.ML;
import static org.ohmstead.statistics.MixedModel.Criterion.REML;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.ohmstead.statistics.MixedModel.Criterion;

/**
 * Against lme4, to 1e-4 of each number, or as said. lme4's search stops a little short of the optimum where the likelihood is
 * flat: there ours is the higher, which is checked with each set.
 */
class MixedModelTest {

    private static final double NAN = Double.NaN;
    private static final double TOLERANCE = 1e-4;
    private static final int[] NONE = {};

    /** The names lme4 gives to a set's grouping, columns and occasions. */
    private record Names(String group, String level, String slope, String occasion) {}

    @ParameterizedTest
    @EnumSource(Criterion.class)
    void sleepstudyWithCorrelatedLinesAgrees(Criterion criterion) {
        Table table = Table.read("sleepstudy.csv");
        MixedFit fit = sleepstudy(table, NONE).fit(criterion);
        Map<String, Double> computed =
                named(table, new Names("Subject", "(Intercept)", "Days", ""), new Names("Subject", "", "", ""), fit);
        check("sleepstudy_corr_" + criterion, computed, TOLERANCE);
        assertThat(fit.boundary()).isFalse();
    }

    @ParameterizedTest
    @EnumSource(Criterion.class)
    void sleepstudyWithIndependentLinesAgrees(Criterion criterion) {
        Table table = Table.read("sleepstudy.csv");
        MixedFit fit = sleepstudy(table, NONE).uncorrelated().fit(criterion);
        Map<String, Double> computed =
                named(table, new Names("Subject", "(Intercept)", "Days", ""), new Names("Subject.1", "", "", ""), fit);
        check("sleepstudy_indep_" + criterion, computed, TOLERANCE);
        assertThat(fit.groupCorrelation()).isZero();
    }

    /** The occasions turn out to share nothing: a fit on the boundary. */
    @Test
    void sleepstudyWithCrossedDaysAgreesOnTheBoundary() {
        Table table = Table.read("sleepstudy.csv");
        MixedFit fit = sleepstudy(table, table.codes("Days")).fit(REML);
        Map<String, Double> computed =
                named(table, new Names("Subject", "(Intercept)", "Days", "occ"), new Names("Subject", "", "", ""), fit);
        IntStream.range(0, 10)
                .forEach(day -> computed.put("blup:occ[" + day + "]:(Intercept)", fit.crossedEffects()[day]));
        check("sleepstudy_crossed_REML", computed, TOLERANCE);
        assertThat(fit.boundary()).isTrue();
        assertThat(fit.crossedVariance()).isZero();
    }

    private static MixedModel sleepstudy(Table table, int[] occasions) {
        return MixedModel.lines(table.numbers("Days"), table.numbers("Reaction"), table.codes("Subject"), occasions);
    }

    @ParameterizedTest
    @EnumSource(Criterion.class)
    void penicillinAgrees(Criterion criterion) {
        Table table = Table.read("Penicillin.csv");
        MixedFit fit = MixedModel.levels(table.numbers("diameter"), table.codes("plate"), table.codes("sample"))
                .fit(criterion);
        Map<String, Double> computed =
                named(table, new Names("plate", "(Intercept)", "", "sample"), new Names("plate", "", "", ""), fit);
        check("Penicillin_" + criterion, computed, TOLERANCE);
    }

    @ParameterizedTest
    @EnumSource(Criterion.class)
    void orthodontAgrees(Criterion criterion) {
        Table table = Table.read("Orthodont.csv");
        double[] age = Arrays.stream(table.numbers("age")).map(a -> a - 11).toArray();
        MixedFit fit = MixedModel.lines(age, table.numbers("distance"), table.codes("Subject"), NONE)
                .fit(criterion);
        Map<String, Double> computed =
                named(table, new Names("Subject", "(Intercept)", "ageC", ""), new Names("Subject", "", "", ""), fit);
        check("Orthodont_age_" + criterion, computed, 1e-3, 0.05);
    }

    @ParameterizedTest
    @EnumSource(Criterion.class)
    void anUnbalancedStringWithSurveyErrorsAgrees(Criterion criterion) {
        Table table = Table.read("crossed_jars.csv");
        MixedFit fit = MixedModel.lines(table.numbers("t"), table.numbers("y"), table.codes("jar"), table.codes("k"))
                .fit(criterion);
        Map<String, Double> computed =
                named(table, new Names("jar", "(Intercept)", "t", "k"), new Names("jar", "", "", ""), fit);
        check("crossed_jars_" + criterion, computed, 2e-4);
    }

    /** A slope through the origin by laser, in thousands of hours; the first, certain reading is left out. */
    @Test
    void lasersWithASlopeOfTheirOwnAgree() {
        Table table = Table.read("gaaslaser.csv");
        double[] hours = table.numbers("hours");
        double[] y = table.numbers("increase");
        IntStream.range(0, y.length).filter(i -> hours[i] == 0).forEach(i -> y[i] = NAN);
        double[][] design =
                Arrays.stream(hours).mapToObj(h -> new double[] {h / 1000}).toArray(double[][]::new);
        MixedFit fit = new MixedModel(y, design, design, table.codes("unit"), NONE, true).fit(REML);
        Map<String, Double> computed = named(table, new Names("unit", "k", "", ""), new Names("unit", "", "", ""), fit);
        computed.put("n", 240.0);
        check("gaas_lmm_REML", computed, TOLERANCE);
    }

    private static void check(String id, Map<String, Double> computed, double tolerance) {
        check(id, computed, tolerance, 0);
    }

    private static void check(String id, Map<String, Double> computed, double tolerance, double scale) {
        Reference lme4 = Reference.set(id);
        lme4.agreesWith(computed, tolerance, scale);
        assertThat(computed.get("logLik")).isGreaterThan(lme4.value("logLik") - 1e-8);
    }

    /** Numbers under lme4's names; an uncorrelated slope goes under the second group name. */
    private static Map<String, Double> named(Table table, Names names, Names slopes, MixedFit fit) {
        Map<String, Double> computed = new HashMap<>();
        computed.put("n", (double) table.rows().size());
        computed.put("logLik", fit.logLikelihood());
        putVariance(computed, "Residual", fit.residualVariance());
        putVariance(computed, names.group() + ":" + names.level(), fit.groupCovariance()[0][0]);
        putFixed(computed, names.level(), fit, 0);
        if (!names.occasion().isEmpty()) {
            putVariance(computed, names.occasion() + ":(Intercept)", fit.crossedVariance());
            putEffects(computed, table, names.occasion().equals("occ") ? "Days" : names.occasion(), fit);
        }
        if (!names.slope().isEmpty()) {
            putFixed(computed, names.slope(), fit, 1);
            putVariance(computed, slopes.group() + ":" + names.slope(), fit.groupCovariance()[1][1]);
            String both = names.group() + ":" + names.level() + ":" + names.slope();
            computed.put("vcov:" + both, fit.groupCovariance()[1][0]);
            computed.put("sdcor:" + both, fit.groupCorrelation());
        }
        table.codesOf(names.group()).forEach((unit, code) -> {
            String place = "blup:" + names.group() + "[" + unit + "]:";
            computed.put(place + names.level(), fit.groupEffects()[code][0]);
            if (!names.slope().isEmpty()) {
                computed.put(place + names.slope(), fit.groupEffects()[code][1]);
            }
        });
        return computed;
    }

    private static void putEffects(Map<String, Double> computed, Table table, String column, MixedFit fit) {
        table.codesOf(column)
                .forEach((word, code) ->
                        computed.put("blup:" + column + "[" + word + "]:(Intercept)", fit.crossedEffects()[code]));
    }

    private static void putVariance(Map<String, Double> computed, String name, double variance) {
        computed.put("vcov:" + name, variance);
        computed.put("sdcor:" + name, Math.sqrt(variance));
    }

    private static void putFixed(Map<String, Double> computed, String name, MixedFit fit, int index) {
        computed.put("fixef:" + name, fit.coefficients()[index]);
        computed.put("fixef_se:" + name, fit.standardError(index));
    }

    /**
     * Balanced one-way layout by the textbook formulas: between and within mean squares give REML exactly (Searle, Casella
     * and McCulloch, Variance Components, 1992, 4.4). Three groups of two: 1 3, 5 7, 12 14: within 2, between 62.33.
     */
    @Test
    void aBalancedOneWayLayoutGivesTheAnalysisOfVariance() {
        MixedFit fit = MixedModel.levels(new double[] {1, 3, 5, 7, 12, 14}, new int[] {0, 0, 1, 1, 2, 2}, NONE)
                .fit(REML);
        assertThat(fit.residualVariance()).isEqualTo(2, within(1e-5));
        assertThat(fit.groupCovariance()[0][0]).isEqualTo((2 * 31.0 - 2) / 2, within(1e-3));
        assertThat(fit.coefficients()[0]).isEqualTo(7, within(1e-9));
        double shrink = 2 * 30.0 / (2 * 30.0 + 2);
        assertThat(fit.groupEffects()[0][0]).isEqualTo(-5 * shrink, within(1e-4));
    }

    @Test
    void groupsThatDifferLessThanTheirReadingsHaveNoVarianceOfTheirOwn() {
        MixedFit fit = MixedModel.levels(new double[] {1, 9, 2, 8, 1.5, 8.5}, new int[] {0, 0, 1, 1, 2, 2}, NONE)
                .fit(ML);
        assertThat(fit.groupCovariance()[0][0]).isZero();
        assertThat(fit.boundary()).isTrue();
        assertThat(fit.groupEffects()[1][0]).isZero();
        double variance = Moments.standardDeviation(new double[] {1, 9, 2, 8, 1.5, 8.5});
        assertThat(fit.residualVariance()).isEqualTo(variance * variance * 5 / 6, within(1e-9));
    }

    @Test
    void missingRowsAndEmptyGroupsChangeNothing() {
        double[] whole = {1, 3, 5, 7, 12, 14};
        double[] holed = {1, 3, NAN, 5, 7, 12, 14};
        MixedFit plain =
                MixedModel.levels(whole, new int[] {0, 0, 1, 1, 2, 2}, NONE).fit(REML);
        MixedFit other =
                MixedModel.levels(holed, new int[] {0, 0, 1, 3, 3, 2, 2}, NONE).fit(REML);
        assertThat(other.logLikelihood()).isEqualTo(plain.logLikelihood(), within(1e-9));
        assertThat(other.groupEffects()[1][0]).isZero();
        assertThat(other.groupEffects()[3][0]).isEqualTo(plain.groupEffects()[1][0], within(1e-4));
    }

    @Test
    void theUnitsOfTimeAndValueDoNotMatter() {
        Table table = Table.read("crossed_jars.csv");
        double[] days = Arrays.stream(table.numbers("t")).map(t -> t * 365).toArray();
        double[] micro = Arrays.stream(table.numbers("y")).map(y -> y * 1e6).toArray();
        MixedFit years = MixedModel.lines(table.numbers("t"), table.numbers("y"), table.codes("jar"), table.codes("k"))
                .fit(ML);
        MixedFit scaled = MixedModel.lines(days, micro, table.codes("jar"), table.codes("k"))
                .fit(ML);
        assertThat(scaled.groupCovariance()[1][1] * 365 * 365 / 1e12)
                .isEqualTo(years.groupCovariance()[1][1], within(1e-8));
        assertThat(scaled.logLikelihood() + 172 * Math.log(1e6)).isEqualTo(years.logLikelihood(), within(1e-6));
    }

    @Test
    void whatTheDataCannotSayIsNaN() {
        MixedFit oneEach =
                MixedModel.levels(new double[] {1, 2}, new int[] {0, 1}, NONE).fit(REML);
        MixedFit oneTime = MixedModel.lines(new double[4], new double[] {1, 2, 3, 4}, new int[4], NONE)
                .fit(REML);
        MixedFit oneEachDay = MixedModel.levels(new double[] {1, 2, 4}, new int[3], new int[] {0, 1, 2})
                .fit(REML);
        MixedFit nothing = MixedModel.levels(new double[0], new int[0], NONE).fit(REML);
        MixedFit twoEach = MixedModel.lines(
                        new double[] {0, 1, 0, 1, 0, 1},
                        new double[] {1, 3, 2, 2, 4, 9},
                        new int[] {0, 0, 1, 1, 2, 2},
                        NONE)
                .fit(ML);
        assertThat(twoEach.determined()).isFalse();
        assertThat(oneEach.determined()).isFalse();
        assertThat(oneTime.determined()).isFalse();
        assertThat(oneTime.coefficients()).containsExactly(NAN, NAN);
        assertThat(oneEachDay.determined()).isFalse();
        assertThat(oneEachDay.crossedEffects()).containsExactly(NAN, NAN, NAN);
        assertThat(nothing.determined()).isFalse();
        assertThat(MixedModel.levels(new double[] {NAN, NAN, NAN}, new int[3], NONE)
                        .fit(ML)
                        .logLikelihood())
                .isNaN();
    }

    @Test
    void aPerfectFitLeavesNoResidualVariance() {
        MixedFit equal = MixedModel.levels(new double[] {5, 5, 5, 5}, new int[] {0, 0, 1, 1}, NONE)
                .fit(REML);
        assertThat(equal.coefficients()[0]).isEqualTo(5, within(1e-12));
        assertThat(equal.residualVariance()).isZero();
        assertThat(equal.logLikelihood()).isInfinite();
    }

    @Test
    void shapesMustMatch() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MixedModel.levels(new double[3], new int[2], NONE))
                .withMessageContaining("3 observations");
        assertThatIllegalArgumentException().isThrownBy(() -> MixedModel.levels(new double[3], new int[3], new int[2]));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MixedModel.levels(new double[2], new int[] {0, -1}, NONE));
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new MixedModel(new double[1], new double[1][1], new double[1][3], new int[1], NONE, true));
    }
}
