package org.ohmstead.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.FastMath;

/**
 * The rank test for a trend: Mann, Econometrica 13 (1945) 245-259; Kendall, Rank Correlation Methods (1975), whose
 * variance with ties in both variables is used.
 *
 * <p>Pairs with a {@code NaN} are skipped. Fewer than two pairs, or one variable all equal, give {@code score} 0 and
 * {@code NaN} for {@code tau}; a variance of 0 gives {@code z} 0 and {@code pValue} 1.
 *
 * @param score Kendall's S, concordant less discordant pairs
 * @param variance of S without a trend, corrected for ties
 * @param z S in standard deviations, with continuity correction
 * @param pValue two-sided, by the normal approximation (use {@link KendallExact} for small untied samples)
 * @param tau Kendall's tau-b, -1 to 1
 */
public record MannKendall(int score, double variance, double z, double pValue, double tau) {

    /** Tests values in the order of their times. */
    public static MannKendall of(double[] x, double[] y) {
        Present.Pairs pairs = Present.pairs(x, y);
        int score = score(pairs);
        Ties inX = Ties.in(pairs.x());
        Ties inY = Ties.in(pairs.y());
        double variance = variance(pairs.count(), inX, inY);
        double z = variance > 0 ? (score - Integer.signum(score)) / Math.sqrt(variance) : 0;
        return new MannKendall(score, variance, z, twoSided(z), tau(score, pairs.count(), inX, inY));
    }

    /** The variance of S alone. */
    static double variance(Present.Pairs pairs) {
        return variance(pairs.count(), Ties.in(pairs.x()), Ties.in(pairs.y()));
    }

    private static int score(Present.Pairs pairs) {
        double[] x = pairs.x();
        double[] y = pairs.y();
        int score = 0;
        for (int i = 1; i < x.length; i++) {
            for (int j = 0; j < i; j++) {
                score += (int) (Math.signum(x[i] - x[j]) * Math.signum(y[i] - y[j]));
            }
        }
        return score;
    }

    private static double variance(int count, Ties x, Ties y) {
        if (count < 2) {
            return 0;
        }
        double n = count;
        double free = (n * (n - 1) * (2 * n + 5) - x.fives() - y.fives()) / 18;
        double pairs = x.pairs() * y.pairs() / (2 * n * (n - 1));
        double triples = count < 3 ? 0 : x.triples() * y.triples() / (9 * n * (n - 1) * (n - 2));
        return free + pairs + triples;
    }

    private static double tau(int score, int count, Ties x, Ties y) {
        double all = count * (count - 1.0);
        double untied = (all - x.pairs()) * (all - y.pairs());
        return untied > 0 ? 2 * score / FastMath.sqrt(untied) : Double.NaN;
    }

    private static double twoSided(double z) {
        return Math.min(1, 2 * new NormalDistribution().cumulativeProbability(-Math.abs(z)));
    }
}
