package org.ohmstead.statistics;

/** How a quantity with its rate, and perhaps its acceleration, moves over an interval; matrices row by row. */
public final class Motion {

    private Motion() {}

    /**
     * The transition of (value, rate), or of (value, rate, acceleration), or of a value alone.
     *
     * @param states 1, 2 or 3
     * @param interval in the unit of time of the rate
     */
    public static double[] transition(int states, double interval) {
        double[] matrix = new double[states * states];
        for (int i = 0; i < states; i++) {
            double term = 1;
            for (int j = i; j < states; j++) {
                matrix[i * states + j] = term;
                term *= interval / (j - i + 1);
            }
        }
        return matrix;
    }

    /**
     * White noise on the rate, integrated over the interval, as it reaches value and rate: q·(t³/3, t²/2; t²/2, t). Bar-Shalom,
     * Li and Kirubarajan, Estimation with Applications to Tracking and Navigation (2001), 6.2.2.
     *
     * @param states 2, or 3 with no noise on the acceleration
     * @param density q, the rate's variance gained in a unit of time
     */
    public static double[] integratedNoise(int states, double density, double interval) {
        double[] matrix = new double[states * states];
        matrix[0] = density * interval * interval * interval / 3;
        matrix[1] = density * interval * interval / 2;
        matrix[states] = matrix[1];
        matrix[states + 1] = density * interval;
        return matrix;
    }
}
