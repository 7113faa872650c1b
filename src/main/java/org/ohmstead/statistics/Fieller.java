package org.ohmstead.statistics;

/**
 * Where a fitted line reaches a height, with Fieller's interval: Fieller, "Some problems in interval estimation", JRSS B
 * 16 (1954) 175-185.
 *
 * <p>A slope that does not differ from 0 at the level has no bounded interval: everything is possible then. An unknown
 * fit gives {@code NaN} and an unknown interval.
 *
 * @param x where the line itself reaches the height; infinite for a level line
 * @param interval for the x at which the true mean line reaches it
 */
public record Fieller(double x, Interval interval) {

    /**
     * Inverts a line.
     *
     * @param line intercept and slope, as from {@link LeastSquares#line}
     * @throws IllegalArgumentException if the fit has other than two coefficients
     */
    public static Fieller crossing(LeastSquares line, double height, double level) {
        if (line.coefficients().length != 2) {
            throw new IllegalArgumentException("a line has two coefficients, not " + line.coefficients().length);
        }
        double below = line.coefficients()[0] - height;
        double slope = line.coefficients()[1];
        return new Fieller(-below / slope, interval(line, below, slope, line.quantile(level)));
    }

    /** Solves (below + slope·x)² ≤ t²·var(below + slope·x) for x. */
    private static Interval interval(LeastSquares line, double below, double slope, double t) {
        double scale = Math.pow(t * line.residualDeviation(), 2);
        double[][] v = line.unscaled();
        double a = slope * slope - scale * v[1][1];
        double b = below * slope - scale * v[0][1];
        double c = below * below - scale * v[0][0];
        if (Double.isNaN(a)) {
            return Interval.UNKNOWN;
        }
        if (a <= 0) {
            return Interval.EVERYTHING;
        }
        return Interval.around(-b / a, Math.sqrt(Math.max(0, b * b - a * c)) / a);
    }
}
