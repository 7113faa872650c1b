package org.ohmstead.statistics;

/** The Cholesky factor of a small symmetric matrix, in place and without ceremony. */
final class Cholesky {

    private Cholesky() {}

    /**
     * Replaces the lower triangle by L with L·L' = a; the upper triangle is neither read nor changed. A pivot below the floor
     * is set to it, so that a perfect fit ends in a small number and not in {@code NaN}.
     */
    static void factor(double[][] a, double floor) {
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = a[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= a[i][k] * a[j][k];
                }
                a[i][j] = i == j ? Math.sqrt(Math.max(sum, floor)) : sum / a[j][j];
            }
        }
    }

    /** Solves L·x = b for the first rows of L, b becoming x. */
    static void forward(double[][] lower, double[] b, int rows) {
        for (int i = 0; i < rows; i++) {
            for (int k = 0; k < i; k++) {
                b[i] -= lower[i][k] * b[k];
            }
            b[i] /= lower[i][i];
        }
    }

    /** Solves L'·x = b for the first rows of L, b becoming x. */
    static void backward(double[][] lower, double[] b, int rows) {
        for (int i = rows - 1; i >= 0; i--) {
            for (int k = i + 1; k < rows; k++) {
                b[i] -= lower[k][i] * b[k];
            }
            b[i] /= lower[i][i];
        }
    }
}
