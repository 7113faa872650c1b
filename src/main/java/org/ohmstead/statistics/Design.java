package org.ohmstead.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/** The complete rows of a least-squares problem, each multiplied by the root of its weight. */
final class Design {

    /** Below this, against columns of length 1, a column counts as dependent on the others. */
    private static final double DEPENDENT = 1e-13;

    private final double[][] rows;
    private final double[] y;
    private final int width;

    private Design(double[][] rows, double[] y, int width) {
        this.rows = rows;
        this.y = y;
        this.width = width;
    }

    /** Rows of 1 and x. */
    static double[][] line(double[] x) {
        double[][] design = new double[x.length][];
        for (int i = 0; i < x.length; i++) {
            design[i] = new double[] {1, x[i]};
        }
        return design;
    }

    static Design of(double[][] design, double[] y, double[] weights) {
        if (design.length != y.length || weights.length != y.length) {
            throw new IllegalArgumentException("the design has " + design.length + " rows, y has " + y.length
                    + " numbers, weights " + weights.length);
        }
        List<double[]> rows = new ArrayList<>();
        double[] kept = new double[y.length];
        for (int i = 0; i < y.length; i++) {
            double root = Math.sqrt(weights[i]);
            double[] row = Arrays.stream(design[i]).map(x -> x * root).toArray();
            if (weights[i] > 0 && !Double.isNaN(y[i] + Arrays.stream(row).sum())) {
                kept[rows.size()] = y[i] * root;
                rows.add(row);
            }
        }
        int width = design.length == 0 ? 0 : design[0].length;
        return new Design(rows.toArray(double[][]::new), Arrays.copyOf(kept, rows.size()), width);
    }

    LeastSquares solve() {
        int free = rows.length - width;
        if (free < 0 || width == 0) {
            return undetermined(free);
        }
        double[] lengths = scaleColumns();
        QRDecomposition qr = new QRDecomposition(MatrixUtils.createRealMatrix(rows), DEPENDENT);
        if (!qr.getSolver().isNonSingular()) {
            return undetermined(free);
        }
        double[] scaled = qr.getSolver().solve(MatrixUtils.createRealVector(y)).toArray();
        double deviation = free == 0 ? Double.NaN : Math.sqrt(residualSquares(scaled) / free);
        return new LeastSquares(unscale(scaled, lengths), inverse(qr, lengths), deviation, free);
    }

    private LeastSquares undetermined(int free) {
        double[] unknown = new double[width];
        Arrays.fill(unknown, Double.NaN);
        double[][] square = new double[width][];
        Arrays.setAll(square, i -> unknown.clone());
        return new LeastSquares(unknown, square, Double.NaN, free);
    }

    private double[] scaleColumns() {
        double[] lengths = new double[width];
        for (int j = 0; j < width; j++) {
            double squares = 0;
            for (double[] row : rows) {
                squares += row[j] * row[j];
            }
            lengths[j] = squares > 0 ? Math.sqrt(squares) : 1;
            for (double[] row : rows) {
                row[j] /= lengths[j];
            }
        }
        return lengths;
    }

    private double residualSquares(double[] scaled) {
        double squares = 0;
        for (int i = 0; i < rows.length; i++) {
            double rest = y[i];
            for (int j = 0; j < width; j++) {
                rest -= rows[i][j] * scaled[j];
            }
            squares += rest * rest;
        }
        return squares;
    }

    private static double[] unscale(double[] scaled, double[] lengths) {
        double[] plain = new double[scaled.length];
        Arrays.setAll(plain, j -> scaled[j] / lengths[j]);
        return plain;
    }

    /** (X'X)⁻¹ = R⁻¹R⁻ᵀ, in the unscaled columns. */
    private double[][] inverse(QRDecomposition qr, double[] lengths) {
        RealMatrix r = qr.getR().getSubMatrix(0, width - 1, 0, width - 1);
        RealMatrix root = new QRDecomposition(r, 0).getSolver().getInverse();
        double[][] inverse = root.multiplyTransposed(root).getData();
        for (int i = 0; i < width; i++) {
            for (int j = 0; j < width; j++) {
                inverse[i][j] /= lengths[i] * lengths[j];
            }
        }
        return inverse;
    }
}
