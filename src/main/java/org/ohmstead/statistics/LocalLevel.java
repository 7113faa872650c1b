package org.ohmstead.statistics;

import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.util.FastMath;

/**
 * A level that wanders, read with noise: Durbin and Koopman, Time Series Analysis by State Space Methods (2001), chapter 2.
 * The level is unknown before the first reading (exact diffuse start).
 *
 * <p>{@code NaN} readings are skipped, the level then only grows less certain; before the first reading it is {@code NaN}.
 *
 * @param levelVariance what the level's variance gains in a unit of time
 * @param noiseVariance of a reading
 */
public record LocalLevel(double levelVariance, double noiseVariance) {

    private static final double WIDEST_LOG_RATIO = 18;

    /**
     * Both variances by maximum likelihood, the noise's concentrated out (section 2.10.2). A series without wandering gives a
     * level variance of next to 0, one without noise a noise variance of next to 0.
     *
     * @return {@code NaN} variances for fewer than three readings; zeros if all are equal
     */
    public static LocalLevel fit(double[] times, double[] readings) {
        double[] present = Present.sorted(readings);
        if (present.length < 3) {
            return new LocalLevel(Double.NaN, Double.NaN);
        }
        if (present[0] == present[present.length - 1]) {
            return new LocalLevel(0, 0);
        }
        double logRatio = new BrentOptimizer(1e-12, 1e-12)
                .optimize(
                        new MaxEval(1000),
                        GoalType.MAXIMIZE,
                        new SearchInterval(-WIDEST_LOG_RATIO, WIDEST_LOG_RATIO),
                        new UnivariateObjectiveFunction(x -> scaled(x).concentrated(times, readings)))
                .getPoint();
        double noise = scaled(logRatio).filter(times, readings).meanSquare();
        return new LocalLevel(noise * FastMath.exp(logRatio), noise);
    }

    private static LocalLevel scaled(double logRatio) {
        return new LocalLevel(FastMath.exp(logRatio), 1);
    }

    private double concentrated(double[] times, double[] readings) {
        Track track = filter(times, readings);
        return -0.5 * (track.foreseen() * FastMath.log(track.meanSquare()) + track.logVariances());
    }

    /**
     * Runs through the readings, forward only.
     *
     * @param times rising
     */
    public Track filter(double[] times, double[] readings) {
        Track track = new Track(times.length);
        double level = Double.NaN;
        double variance = Double.NaN;
        for (int i = 0; i < times.length; i++) {
            variance += i == 0 ? 0 : levelVariance * (times[i] - times[i - 1]);
            track.ahead[i] = variance;
            if (Double.isNaN(level)) {
                level = readings[i];
                variance = Double.isNaN(level) ? Double.NaN : noiseVariance;
            } else if (!Double.isNaN(readings[i])) {
                double gain = variance / (variance + noiseVariance);
                track.count(readings[i] - level, variance + noiseVariance);
                level += gain * (readings[i] - level);
                variance *= 1 - gain;
            }
            track.levels[i] = level;
            track.variances[i] = variance;
        }
        return track;
    }

    /** Levels and variances along the series. */
    public static final class Track {

        private final double[] levels;
        private final double[] variances;
        private final double[] ahead;
        private double squares;
        private double logVariances;
        private int foreseen;
        private boolean smoothed;

        private Track(int length) {
            levels = new double[length];
            variances = new double[length];
            ahead = new double[length];
        }

        private void count(double innovation, double variance) {
            squares += innovation * innovation / variance;
            logVariances += FastMath.log(variance);
            foreseen++;
        }

        /** The level given the readings so far, or all readings once smoothed. */
        public double[] levels() {
            return levels.clone();
        }

        /** The variance of each level. */
        public double[] variances() {
            return variances.clone();
        }

        /** The diffuse log-likelihood of all readings after the first. */
        public double logLikelihood() {
            return -0.5 * (foreseen * FastMath.log(2 * FastMath.PI) + logVariances + squares);
        }

        /** The same run backward, so that each level knows all readings: Rauch, Tung and Striebel, AIAA J. 3 (1965). */
        public Track smooth() {
            if (smoothed) {
                return this;
            }
            Track smooth = new Track(levels.length);
            int last = levels.length - 1;
            System.arraycopy(levels, 0, smooth.levels, 0, levels.length);
            System.arraycopy(variances, 0, smooth.variances, 0, levels.length);
            for (int i = last - 1; i >= 0; i--) {
                double gain = ahead[i + 1] > 0 ? variances[i] / ahead[i + 1] : 1;
                smooth.levels[i] += gain * (smooth.levels[i + 1] - levels[i]);
                smooth.variances[i] += gain * gain * (smooth.variances[i + 1] - ahead[i + 1]);
            }
            smooth.smoothed = true;
            smooth.squares = squares;
            smooth.logVariances = logVariances;
            smooth.foreseen = foreseen;
            return smooth;
        }

        private double meanSquare() {
            return squares / foreseen;
        }

        private double logVariances() {
            return logVariances;
        }

        private int foreseen() {
            return foreseen;
        }
    }
}
