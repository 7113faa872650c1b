package org.ohmstead.statistics;

/**
 * The sums of products of which a mixed model's likelihood is made. With W = (occasion indicators, fixed columns, y) the sums
 * are W'W and, by group, Z'Z and Z'W; the random columns Z are scaled to root mean square 1 and y is taken less its plain
 * fit, which changes neither likelihood nor random effects.
 */
final class MixedProducts {

    final int observations;
    final int occasions;
    final int fixedColumns;
    final int randomColumns;
    final boolean correlated;

    /** The plain fit that was taken out of y. */
    final double[] plain;

    /** By what each random column was divided. */
    final double[] scales;

    /** Rows and columns in the order occasions, fixed, y. */
    final double[][] ww;

    /** By group: random columns by random columns. */
    final double[][][] zz;

    /** By group: random columns by the columns of W. */
    final double[][][] zw;

    MixedProducts(MixedModel model) {
        observations = model.y().length;
        occasions = MixedModel.levels(model.crossed());
        fixedColumns = model.fixedColumns();
        randomColumns = model.randomColumns();
        correlated = model.correlated() && randomColumns == 2;
        plain = LeastSquares.fit(model.fixed(), model.y()).coefficients();
        scales = scales(model.random());
        int width = width();
        int groups = MixedModel.levels(model.groups());
        ww = new double[width][width];
        zz = new double[groups][randomColumns][randomColumns];
        zw = new double[groups][randomColumns][width];
        for (int i = 0; i < observations; i++) {
            add(model.groups()[i], scaled(model.random()[i]), row(model, i));
        }
    }

    /** The number of columns of W. */
    int width() {
        return occasions + fixedColumns + 1;
    }

    private double[] scales(double[][] random) {
        double[] squares = new double[randomColumns];
        for (double[] row : random) {
            for (int j = 0; j < randomColumns; j++) {
                squares[j] += row[j] * row[j] / observations;
            }
        }
        for (int j = 0; j < randomColumns; j++) {
            squares[j] = squares[j] > 0 ? Math.sqrt(squares[j]) : 1;
        }
        return squares;
    }

    private double[] scaled(double[] random) {
        double[] z = random.clone();
        for (int j = 0; j < z.length; j++) {
            z[j] /= scales[j];
        }
        return z;
    }

    private double[] row(MixedModel model, int i) {
        double[] w = new double[width()];
        if (occasions > 0) {
            w[model.crossed()[i]] = 1;
        }
        double rest = model.y()[i];
        for (int j = 0; j < fixedColumns; j++) {
            w[occasions + j] = model.fixed()[i][j];
            rest -= model.fixed()[i][j] * plain[j];
        }
        w[occasions + fixedColumns] = rest;
        return w;
    }

    private void add(int group, double[] z, double[] w) {
        addOuter(w, w, ww);
        addOuter(z, z, zz[group]);
        addOuter(z, w, zw[group]);
    }

    private static void addOuter(double[] left, double[] right, double[][] sum) {
        for (int i = 0; i < left.length; i++) {
            for (int j = 0; left[i] != 0 && j < right.length; j++) {
                sum[i][j] += left[i] * right[j];
            }
        }
    }
}
