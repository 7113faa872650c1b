package org.ohmstead.statistics;

/**
 * Degradation as Brownian motion with drift, by maximum likelihood from increments: Whitmore, Lifetime Data Analysis 1 (1995)
 * 307-319.
 *
 * @param drift in a unit of time; {@code NaN} without increments
 * @param variance gained in a unit of time; 0 from a single increment
 */
public record WienerProcess(double drift, double variance) {

    /**
     * Fits increments of one or many paths; those with a {@code NaN} or without duration are skipped.
     *
     * @param durations of the increments
     */
    public static WienerProcess fit(double[] durations, double[] increments) {
        Increments steps = Increments.of(durations, increments);
        double drift = steps.rate();
        double sum = 0;
        for (int i = 0; i < steps.count(); i++) {
            double off = steps.gains()[i] - drift * steps.durations()[i];
            sum += off * off / steps.durations()[i];
        }
        return new WienerProcess(drift, sum / steps.count());
    }

    /** When the process first has risen by the distance. */
    public FirstPassage passage(double distance) {
        return new FirstPassage(distance, drift, variance);
    }
}
