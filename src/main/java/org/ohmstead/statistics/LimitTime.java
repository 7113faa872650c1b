package org.ohmstead.statistics;

/**
 * When one path of readings reaches a limit, three plain ways ("pseudo failure times"): Meeker and Escobar, Statistical
 * Methods for Reliability Data (1998), 13.8.
 *
 * <p>Pairs with a {@code NaN} are skipped. A line that does not rise, or cannot be fitted, never reaches the limit: the time
 * is infinite or {@code NaN}.
 */
public final class LimitTime {

    private LimitTime() {}

    /** By the least-squares line with intercept. */
    public static double byLine(double[] times, double[] values, double limit) {
        double[] line = LeastSquares.line(times, values).coefficients();
        return reached(limit - line[0], line[1]);
    }

    /** By the least-squares line through the origin. */
    public static double throughOrigin(double[] times, double[] values, double limit) {
        return reached(limit, slopeThroughOrigin(times, values));
    }

    /** The slope of the least-squares line through the origin. */
    public static double slopeThroughOrigin(double[] times, double[] values) {
        Present.Pairs pairs = Present.pairs(times, values);
        double products = 0;
        double squares = 0;
        for (int i = 0; i < pairs.count(); i++) {
            products += pairs.x()[i] * pairs.y()[i];
            squares += pairs.x()[i] * pairs.x()[i];
        }
        return products / squares;
    }

    /**
     * By the straight line between the readings on either side of the first crossing.
     *
     * @param times rising
     * @return {@code NaN} if no reading reaches the limit; the first time if the first one does
     */
    public static double byInterpolation(double[] times, double[] values, double limit) {
        Present.Pairs pairs = Present.pairs(times, values);
        double[] t = pairs.x();
        double[] y = pairs.y();
        for (int i = 0; i < t.length; i++) {
            if (y[i] >= limit) {
                return i == 0 ? t[0] : t[i - 1] + (limit - y[i - 1]) / (y[i] - y[i - 1]) * (t[i] - t[i - 1]);
            }
        }
        return Double.NaN;
    }

    private static double reached(double distance, double slope) {
        return slope <= 0 ? Double.POSITIVE_INFINITY : distance / slope;
    }
}
