package org.ohmstead.statistics;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A linear mixed model with random coefficients by group (a level and, if wanted, a slope of each unit's own) and, if
 * wanted, a random level by a second, crossed grouping (what all units measured on one occasion share): Bates, Maechler,
 * Bolker and Walker, "Fitting linear mixed-effects models using lme4", J. Stat. Softw. 67(1) (2015).
 *
 * <p>Rows with a {@code NaN} are skipped. See {@link MixedFit} for what the data cannot determine.
 *
 * @param y the observations
 * @param fixed one row an observation: the columns all share
 * @param random one row an observation: one or two columns whose coefficients vary by group
 * @param groups each observation's group, from 0
 * @param crossed each observation's occasion, from 0, or empty for none
 * @param correlated whether a group's two coefficients may be correlated
 */
public record MixedModel(
        double[] y, double[][] fixed, double[][] random, int[] groups, int[] crossed, boolean correlated) {

    /** What is maximised. */
    public enum Criterion {
        /** The restricted likelihood: variances without the bias from estimating the fixed coefficients. */
        REML,
        /** The full likelihood, comparable between models with different fixed columns. */
        ML
    }

    /**
     * Checks the shapes.
     *
     * @throws IllegalArgumentException if lengths differ, a code is negative or there are not one or two random columns
     */
    public MixedModel {
        boolean crossedFits = crossed.length == 0 || crossed.length == y.length;
        if (fixed.length != y.length || random.length != y.length || groups.length != y.length || !crossedFits) {
            throw new IllegalArgumentException("for " + y.length + " observations there are " + fixed.length
                    + " fixed rows, " + random.length + " random rows, " + groups.length + " groups, "
                    + crossed.length + " occasions");
        }
        if (IntStream.concat(Arrays.stream(groups), Arrays.stream(crossed)).anyMatch(code -> code < 0)) {
            throw new IllegalArgumentException("groups and occasions are numbered from 0");
        }
        if (y.length > 0 && (random[0].length < 1 || random[0].length > 2)) {
            throw new IllegalArgumentException("one or two random columns, not " + random[0].length);
        }
    }

    /** One mean and a level of each group's own. */
    public static MixedModel levels(double[] y, int[] groups, int[] crossed) {
        double[][] ones = new double[y.length][];
        Arrays.fill(ones, new double[] {1});
        return new MixedModel(y, ones, ones, groups, crossed, true);
    }

    /** One line and a line of each group's own about it. */
    public static MixedModel lines(double[] x, double[] y, int[] groups, int[] crossed) {
        double[][] line = Design.line(x);
        return new MixedModel(y, line, line, groups, crossed, true);
    }

    /** The same without correlation between a group's level and slope. */
    public MixedModel uncorrelated() {
        return new MixedModel(y, fixed, random, groups, crossed, false);
    }

    /** Fits by the criterion. */
    public MixedFit fit(Criterion criterion) {
        MixedModel whole = complete();
        if (!whole.determined()) {
            return MixedFit.undetermined(this);
        }
        return new MixedSearch(new ProfiledDeviance(new MixedProducts(whole), criterion)).best();
    }

    int randomColumns() {
        return y.length == 0 ? 1 : random[0].length;
    }

    int fixedColumns() {
        return y.length == 0 ? 1 : fixed[0].length;
    }

    static int levels(int[] codes) {
        return Arrays.stream(codes).max().orElse(-1) + 1;
    }

    /** Fewer random coefficients than observations, and a plain fit that leaves residuals to share out. */
    private boolean determined() {
        long own = Arrays.stream(groups).distinct().count() * randomColumns();
        long shared = Arrays.stream(crossed).distinct().count();
        return own < y.length && shared < y.length && LeastSquares.fit(fixed, y).residualDeviation() >= 0;
    }

    private MixedModel complete() {
        int[] kept = IntStream.range(0, y.length).filter(this::isComplete).toArray();
        return new MixedModel(
                Arrays.stream(kept).mapToDouble(i -> y[i]).toArray(),
                Arrays.stream(kept).mapToObj(i -> fixed[i]).toArray(double[][]::new),
                Arrays.stream(kept).mapToObj(i -> random[i]).toArray(double[][]::new),
                Arrays.stream(kept).map(i -> groups[i]).toArray(),
                crossed.length == 0
                        ? crossed
                        : Arrays.stream(kept).map(i -> crossed[i]).toArray(),
                correlated);
    }

    private boolean isComplete(int i) {
        double sum =
                y[i] + Arrays.stream(fixed[i]).sum() + Arrays.stream(random[i]).sum();
        return !Double.isNaN(sum);
    }
}
