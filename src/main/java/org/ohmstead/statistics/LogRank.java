package org.ohmstead.statistics;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * The log-rank test of equal survival: Mantel, Cancer Chemother. Rep. 50 (1966) 163-170; Peto and Peto, JRSS A 135 (1972)
 * 185-207.
 *
 * <p>Units with a {@code NaN} time are skipped. Without failures, or with fewer than two groups, the statistic is 0 and
 * the chance 1.
 *
 * @param chiSquare the statistic
 * @param degreesOfFreedom groups less one
 * @param pValue the chance of at least this statistic if all groups survive alike
 */
public record LogRank(double chiSquare, int degreesOfFreedom, double pValue) {

    /**
     * Compares groups.
     *
     * @param groups numbered from 0
     */
    public static LogRank of(double[] times, boolean[] failed, int[] groups) {
        int count = 1 + Arrays.stream(groups).max().orElse(-1);
        RiskTable all = RiskTable.of(times, failed);
        if (count < 2 || all.times().length == 0) {
            return new LogRank(0, Math.max(0, count - 1), 1);
        }
        RealVector excess = new ArrayRealVector(count - 1);
        RealMatrix variance = new Array2DRowRealMatrix(count - 1, count - 1);
        RiskTable[] tables = new RiskTable[count - 1];
        Arrays.setAll(tables, g -> all.group(times, failed, groups, g));
        for (int step = 0; step < all.times().length; step++) {
            addStep(all, tables, step, excess, variance);
        }
        RealVector solved = new SingularValueDecomposition(variance)
                .getSolver()
                .getInverse()
                .operate(excess);
        double statistic = excess.dotProduct(solved);
        double chance = 1 - new ChiSquaredDistribution(count - 1).cumulativeProbability(statistic);
        return new LogRank(statistic, count - 1, chance);
    }

    /** Adds the observed less expected failures of a step, and their hypergeometric covariance. */
    private static void addStep(RiskTable all, RiskTable[] tables, int step, RealVector excess, RealMatrix variance) {
        double n = all.atRisk()[step];
        double d = all.failures()[step];
        double spread = n > 1 ? d * (n - d) / (n - 1) : 0;
        for (int g = 0; g < tables.length; g++) {
            double share = tables[g].atRisk()[step] / n;
            excess.addToEntry(g, tables[g].failures()[step] - d * share);
            for (int h = 0; h < tables.length; h++) {
                double other = tables[h].atRisk()[step] / n;
                variance.addToEntry(g, h, spread * share * ((g == h ? 1 : 0) - other));
            }
        }
    }
}
