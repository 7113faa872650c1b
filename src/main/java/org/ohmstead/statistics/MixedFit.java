package org.ohmstead.statistics;

import java.util.Arrays;

/**
 * A fitted mixed model.
 *
 * <p>With no more observations than random coefficients, or dependent fixed columns, every number is {@code NaN}. A perfect
 * fit has a residual variance of 0 and an infinite log-likelihood. A fit on the boundary, where a variance is 0 or a
 * correlation ±1, is a proper answer: the data show no such variation.
 *
 * @param coefficients of the fixed columns
 * @param coefficientCovariance of their estimates
 * @param groupCovariance between the random coefficients of a group
 * @param crossedVariance of the level shared on an occasion; 0 without occasions
 * @param residualVariance of one observation about its group's own fit
 * @param logLikelihood full or restricted, as asked for
 * @param groupEffects each group's own coefficients less the common ones (conditional modes, "BLUPs")
 * @param crossedEffects each occasion's shared level
 * @param boundary whether some variance came out as 0 or the correlation as ±1
 */
public record MixedFit(
        double[] coefficients,
        double[][] coefficientCovariance,
        double[][] groupCovariance,
        double crossedVariance,
        double residualVariance,
        double logLikelihood,
        double[][] groupEffects,
        double[] crossedEffects,
        boolean boundary) {

    /** Whether the data determine the fit. */
    public boolean determined() {
        return !Double.isNaN(residualVariance);
    }

    /** The standard error of a fixed coefficient. */
    public double standardError(int index) {
        return Math.sqrt(coefficientCovariance[index][index]);
    }

    /** The correlation between a group's level and slope; {@code NaN} where one of them does not vary. */
    public double groupCorrelation() {
        return groupCovariance[1][0] / Math.sqrt(groupCovariance[0][0] * groupCovariance[1][1]);
    }

    static MixedFit undetermined(MixedModel model) {
        int p = model.fixedColumns();
        int q = model.randomColumns();
        return new MixedFit(
                unknown(1, p)[0],
                unknown(p, p),
                unknown(q, q),
                Double.NaN,
                Double.NaN,
                Double.NaN,
                unknown(MixedModel.levels(model.groups()), q),
                unknown(1, MixedModel.levels(model.crossed()))[0],
                false);
    }

    private static double[][] unknown(int rows, int columns) {
        double[][] table = new double[rows][columns];
        for (double[] row : table) {
            Arrays.fill(row, Double.NaN);
        }
        return table;
    }
}
