package org.ohmstead.testbed;

import java.util.Arrays;

/**
 * The simple rules that a forecast must beat, each from the logarithms of one string's readings up to a survey. A rule
 * knows recorded work: a unit's history starts at its last recorded fitting. Higher means worse; NaN means no opinion.
 */
final class Rivals {
    private final double[] years;
    private final double[][] logs;
    private final int[] since;

    /**
     * @param years of the surveys so far
     * @param logs per survey, per unit
     * @param since per unit, the first survey after its last recorded fitting
     */
    Rivals(double[] years, double[][] logs, int[] since) {
        this.years = years;
        this.logs = logs;
        this.since = since;
    }

    private int last() {
        return years.length - 1;
    }

    double[] overOwnBaseline() {
        return perUnit(i -> {
            for (int s = since[i]; s <= last(); s++) {
                if (Double.isFinite(logs[s][i])) {
                    return logs[last()][i] - logs[s][i];
                }
            }
            return Double.NaN;
        });
    }

    double[] overStringMedian() {
        double middle = median(logs[last()]);
        return perUnit(i -> logs[last()][i] - middle);
    }

    double[] robustZ() {
        double middle = median(logs[last()]);
        double[] apart =
                Arrays.stream(logs[last()]).map(v -> Math.abs(v - middle)).toArray();
        double scale = 1.4826 * median(apart) + 1e-6;
        return perUnit(i -> (logs[last()][i] - middle) / scale);
    }

    /** Rise since fitted, a year ahead, on a straight line through the unit's readings. */
    double[] straightLine() {
        return perUnit(i -> {
            double[][] points = points(i, logs);
            return points[0].length < 2 ? Double.NaN : leastSquaresSlope(points) * (last(points) + 1);
        });
    }

    /** The same on Theil-Sen lines through survey effects and through each unit's residuals. */
    double[] medianPolish() {
        double[][] residual = new double[logs.length][];
        double[] effect = new double[logs.length];
        polish(residual, effect);
        double common = theilSen(years, effect);
        double ahead = 1 + years[last()] - years[0];
        return perUnit(i -> {
            double[][] points = points(i, residual);
            double own = points[0].length < 2 ? 0 : theilSen(points[0], points[1]) * (last(points) + 1);
            return own + common * ahead;
        });
    }

    private void polish(double[][] residual, double[] effect) {
        for (int s = 0; s < logs.length; s++) {
            residual[s] = logs[s].clone();
        }
        for (int round = 0; round < 3; round++) {
            for (int s = 0; s < residual.length; s++) {
                double middle = median(residual[s]);
                middle = Double.isFinite(middle) ? middle : 0;
                effect[s] += middle;
                subtract(residual[s], middle);
            }
            levelUnits(residual);
        }
    }

    private void levelUnits(double[][] residual) {
        for (int i = 0; i < since.length; i++) {
            double middle = median(points(i, residual)[1]);
            for (int s = since[i]; s < residual.length && Double.isFinite(middle); s++) {
                residual[s][i] -= middle;
            }
        }
    }

    private static void subtract(double[] values, double by) {
        Arrays.setAll(values, i -> values[i] - by);
    }

    private double[][] points(int unit, double[][] from) {
        int[] read = java.util.stream.IntStream.rangeClosed(since[unit], last())
                .filter(s -> Double.isFinite(from[s][unit]))
                .toArray();
        return new double[][] {
            Arrays.stream(read).mapToDouble(s -> years[s]).toArray(),
            Arrays.stream(read).mapToDouble(s -> from[s][unit]).toArray()
        };
    }

    private static double last(double[][] points) {
        return points[0][points[0].length - 1] - points[0][0];
    }

    private static double leastSquaresSlope(double[][] points) {
        double meanX = Arrays.stream(points[0]).average().orElseThrow();
        double meanY = Arrays.stream(points[1]).average().orElseThrow();
        double xx = 1e-9;
        double xy = 0;
        for (int k = 0; k < points[0].length; k++) {
            xx += (points[0][k] - meanX) * (points[0][k] - meanX);
            xy += (points[0][k] - meanX) * (points[1][k] - meanY);
        }
        return xy / xx;
    }

    static double theilSen(double[] x, double[] y) {
        double[] slopes = new double[x.length * (x.length - 1) / 2];
        int k = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                slopes[k++] = x[j] > x[i] ? (y[j] - y[i]) / (x[j] - x[i]) : Double.NaN;
            }
        }
        double middle = median(slopes);
        return Double.isFinite(middle) ? middle : 0;
    }

    static double median(double[] values) {
        double[] finite =
                Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
        int n = finite.length;
        return n == 0 ? Double.NaN : n % 2 == 1 ? finite[n / 2] : (finite[n / 2 - 1] + finite[n / 2]) / 2;
    }

    private double[] perUnit(java.util.function.IntToDoubleFunction rule) {
        double[] scores = new double[since.length];
        Arrays.setAll(scores, rule);
        return scores;
    }
}
