package org.ohmstead.statistics;

import java.util.Arrays;
import org.hipparchus.util.FastMath;
import org.ohmstead.statistics.MixedModel.Criterion;

/** A mixed model's equations at one θ, with groups eliminated: see {@link ProfiledDeviance}. */
final class MixedEquations {

    /** Against y'y: a smaller residual sum of squares counts as a perfect fit. */
    private static final double PERFECT = 1e-20;

    private final MixedProducts sums;
    private final Criterion criterion;

    private final double[][] factor;
    private final double occasionFactor;
    private final double[][][] groupFactors;
    private final double[][][] groupRows;
    private final double[][] rest;
    private double logDeterminant;

    MixedEquations(MixedProducts sums, Criterion criterion, double[] theta) {
        this.sums = sums;
        this.criterion = criterion;
        factor = factor(theta);
        occasionFactor = sums.occasions > 0 ? theta[theta.length - 1] : 0;
        groupFactors = new double[sums.zz.length][][];
        groupRows = new double[sums.zz.length][][];
        rest = scaledProducts();
        for (int g = 0; g < sums.zz.length; g++) {
            eliminate(g);
        }
        double yy = sums.ww[sums.width() - 1][sums.width() - 1];
        Cholesky.factor(rest, Math.max(PERFECT * yy, Double.MIN_NORMAL));
        for (int k = 0; k < sums.occasions; k++) {
            logDeterminant += 2 * FastMath.log(rest[k][k]);
        }
    }

    private double[][] factor(double[] theta) {
        if (sums.randomColumns == 1) {
            return new double[][] {{theta[0]}};
        }
        return sums.correlated
                ? new double[][] {{theta[0], 0}, {theta[1], theta[2]}}
                : new double[][] {{theta[0], 0}, {0, theta[1]}};
    }

    private double occasionScale(int column) {
        return column < sums.occasions ? occasionFactor : 1;
    }

    private double[][] scaledProducts() {
        int width = sums.width();
        double[][] scaled = new double[width][width];
        for (int i = 0; i < width; i++) {
            for (int j = 0; j <= i; j++) {
                scaled[i][j] = sums.ww[i][j] * occasionScale(i) * occasionScale(j);
            }
            scaled[i][i] += i < sums.occasions ? 1 : 0;
        }
        return scaled;
    }

    private void eliminate(int group) {
        double[][] own = ownProducts(sums.zz[group]);
        Cholesky.factor(own, 0);
        double[][] columns = new double[sums.width()][sums.randomColumns];
        for (int c = 0; c < columns.length; c++) {
            for (int a = 0; a < sums.randomColumns; a++) {
                for (int b = a; b < sums.randomColumns; b++) {
                    columns[c][a] += factor[b][a] * sums.zw[group][b][c] * occasionScale(c);
                }
            }
            Cholesky.forward(own, columns[c], sums.randomColumns);
        }
        subtract(columns);
        groupFactors[group] = own;
        groupRows[group] = columns;
        for (int a = 0; a < sums.randomColumns; a++) {
            logDeterminant += 2 * FastMath.log(own[a][a]);
        }
    }

    /** Λ'Z'ZΛ + I. */
    private double[][] ownProducts(double[][] zz) {
        int q = sums.randomColumns;
        double[][] own = new double[q][q];
        for (int a = 0; a < q; a++) {
            for (int b = 0; b < q; b++) {
                for (int i = a; i < q; i++) {
                    for (int j = b; j < q; j++) {
                        own[a][b] += factor[i][a] * zz[i][j] * factor[j][b];
                    }
                }
            }
            own[a][a] += 1;
        }
        return own;
    }

    private void subtract(double[][] columns) {
        for (int i = 0; i < columns.length; i++) {
            for (int j = 0; j <= i; j++) {
                for (int a = 0; a < sums.randomColumns; a++) {
                    rest[i][j] -= columns[i][a] * columns[j][a];
                }
            }
        }
    }

    double deviance() {
        double free = degreesOfFreedom();
        double fixed = criterion == Criterion.REML ? logDeterminantOfFixed() : 0;
        return logDeterminant + fixed + free * (1 + FastMath.log(2 * FastMath.PI * residualVariance()));
    }

    private double logDeterminantOfFixed() {
        double sum = 0;
        for (int k = sums.occasions; k < sums.width() - 1; k++) {
            sum += 2 * FastMath.log(rest[k][k]);
        }
        return sum;
    }

    private double degreesOfFreedom() {
        return sums.observations - (criterion == Criterion.REML ? sums.fixedColumns : 0);
    }

    double residualVariance() {
        double root = rest[sums.width() - 1][sums.width() - 1];
        return root * root / degreesOfFreedom();
    }

    boolean perfect() {
        double root = rest[sums.width() - 1][sums.width() - 1];
        double yy = sums.ww[sums.width() - 1][sums.width() - 1];
        return root * root <= Math.max(2 * PERFECT * yy, 2 * Double.MIN_NORMAL);
    }

    /** Occasions' spherical effects, then corrections to the plain fixed coefficients. */
    double[] solution() {
        int size = sums.width() - 1;
        double[] solution = new double[size];
        System.arraycopy(rest[size], 0, solution, 0, size);
        Cholesky.backward(rest, solution, size);
        return solution;
    }

    /** A group's coefficients less the common ones, in the random columns as given. */
    double[] groupEffect(int group, double[] solution) {
        int q = sums.randomColumns;
        double[] spherical = groupRows[group][sums.width() - 1].clone();
        for (int c = 0; c < solution.length; c++) {
            for (int a = 0; a < q; a++) {
                spherical[a] -= groupRows[group][c][a] * solution[c];
            }
        }
        Cholesky.backward(groupFactors[group], spherical, q);
        double[] effect = new double[q];
        for (int a = 0; a < q; a++) {
            for (int b = 0; b <= a; b++) {
                effect[a] += factor[a][b] * spherical[b] / sums.scales[a];
            }
        }
        return effect;
    }

    double occasionFactor() {
        return occasionFactor;
    }

    /** A group's covariance over the residual variance, in the random columns as given. */
    double[][] relativeCovariance() {
        int q = sums.randomColumns;
        double[][] covariance = new double[q][q];
        for (int a = 0; a < q; a++) {
            for (int b = 0; b < q; b++) {
                for (int k = 0; k <= Math.min(a, b); k++) {
                    covariance[a][b] += factor[a][k] * factor[b][k] / (sums.scales[a] * sums.scales[b]);
                }
            }
        }
        return covariance;
    }

    /** (R'R)⁻¹ of the fixed columns: times the residual variance their estimates' covariance. */
    double[][] fixedInverse() {
        int p = sums.fixedColumns;
        double[][] lower = new double[p][];
        for (int i = 0; i < p; i++) {
            lower[i] = Arrays.copyOfRange(rest[sums.occasions + i], sums.occasions, sums.occasions + p);
        }
        double[][] inverse = new double[p][p];
        for (int i = 0; i < p; i++) {
            inverse[i][i] = 1;
            Cholesky.forward(lower, inverse[i], p);
            Cholesky.backward(lower, inverse[i], p);
        }
        return inverse;
    }
}
