package org.ohmstead.statistics;

/**
 * A two-way table taken apart into overall + row + column + residual by sweeping out medians: Tukey, Exploratory Data
 * Analysis (1977); order of sweeps and stopping as in Velleman and Hoaglin, ABC of EDA (1981).
 *
 * <p>{@code NaN} is missing and skipped. A row or column without any value has the effect {@code NaN} and disturbs
 * nothing; an empty table has the overall {@code NaN}.
 *
 * @param overall the common level
 * @param rows one effect a row, median 0
 * @param columns one effect a column, median 0
 * @param residuals of the table's shape, {@code NaN} where the table is
 */
public record MedianPolish(double overall, double[] rows, double[] columns, double[][] residuals) {

    private static final int MOST_SWEEPS = 50;
    private static final double SETTLED = 0.01;

    /**
     * Polishes a table, which is left as it is.
     *
     * @param table rows of one length
     */
    public static MedianPolish of(double[][] table) {
        if (table.length == 0) {
            return new MedianPolish(Double.NaN, new double[0], new double[0], new double[0][]);
        }
        Sweep sweep = new Sweep(table);
        double before = 0;
        for (int i = 0; i < MOST_SWEEPS; i++) {
            double after = sweep.rowsThenColumns();
            if (after == 0 || Math.abs(after - before) < SETTLED * after) {
                break;
            }
            before = after;
        }
        return sweep.result();
    }

    /** The working state of a polish. */
    private static final class Sweep {

        private final double[][] rest;
        private final double[] rows;
        private final double[] columns;
        private double overall;

        Sweep(double[][] table) {
            rest = new double[table.length][];
            for (int i = 0; i < table.length; i++) {
                rest[i] = table[i].clone();
            }
            rows = new double[table.length];
            columns = new double[table[0].length];
        }

        /** The sum of absolute residuals that is left. */
        double rowsThenColumns() {
            for (int i = 0; i < rows.length; i++) {
                sweepRow(i);
            }
            overall += centre(columns);
            for (int j = 0; j < columns.length; j++) {
                sweepColumn(j);
            }
            overall += centre(rows);
            return sumOfAbsolutes();
        }

        MedianPolish result() {
            boolean nothing = Double.isNaN(Quantiles.median(rows)) || Double.isNaN(Quantiles.median(columns));
            return new MedianPolish(nothing ? Double.NaN : overall, rows, columns, rest);
        }

        private void sweepRow(int i) {
            double median = Quantiles.median(rest[i]);
            rows[i] += median;
            for (int j = 0; j < columns.length; j++) {
                rest[i][j] -= median;
            }
        }

        private void sweepColumn(int j) {
            double[] column = new double[rows.length];
            for (int i = 0; i < rows.length; i++) {
                column[i] = rest[i][j];
            }
            double median = Quantiles.median(column);
            columns[j] += median;
            for (int i = 0; i < rows.length; i++) {
                rest[i][j] -= median;
            }
        }

        /** Takes the median out of the effects and hands it back. */
        private static double centre(double[] effects) {
            double median = Quantiles.median(effects);
            if (Double.isNaN(median)) {
                return 0;
            }
            for (int i = 0; i < effects.length; i++) {
                effects[i] -= median;
            }
            return median;
        }

        private double sumOfAbsolutes() {
            double sum = 0;
            for (double[] row : rest) {
                for (double value : row) {
                    sum += Double.isNaN(value) ? 0 : Math.abs(value);
                }
            }
            return sum;
        }
    }
}
