package org.ohmstead.statistics;

/**
 * A level with a slope, both wandering, read with noise (local linear trend): Durbin and Koopman, Time Series Analysis by
 * State Space Methods (2001), 3.2.1, here in continuous time. {@code NaN} readings are skipped.
 *
 * @param levelDensity what the level's own variance gains in a unit of time
 * @param slopeDensity what the slope's variance gains in a unit of time
 * @param noiseVariance of a reading
 */
public record LocalTrend(double levelDensity, double slopeDensity, double noiseVariance) {

    private static final double[] LEVEL = {1, 0};

    /** The state at a time: level and slope, with their covariance row by row. */
    public record State(double time, double[] mean, double[] covariance, double logLikelihood) {

        /** The level's mean at a later time. */
        public double levelAt(double later) {
            return mean[0] + mean[1] * (later - time);
        }
    }

    /** Moves a state on to a time and takes in the reading there; the state given is left as it is. */
    public State advance(State from, double time, double reading) {
        double[] mean = from.mean().clone();
        double[] covariance = from.covariance().clone();
        double interval = time - from.time();
        double[] noise = Motion.integratedNoise(2, slopeDensity, interval);
        noise[0] += levelDensity * interval;
        Kalman.predict(mean, covariance, Motion.transition(2, interval), noise);
        double gained = Kalman.update(mean, covariance, LEVEL, reading, noiseVariance);
        return new State(time, mean, covariance, from.logLikelihood() + gained);
    }

    /** Takes in a whole series. */
    public State run(State from, double[] times, double[] readings) {
        State state = from;
        for (int i = 0; i < times.length; i++) {
            state = advance(state, times[i], readings[i]);
        }
        return state;
    }
}
