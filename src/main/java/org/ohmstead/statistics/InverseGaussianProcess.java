package org.ohmstead.statistics;

/**
 * Degradation that never falls, with inverse Gaussian increments of mean μ·t and shape λ·t²: Wang and Xu, Technometrics 52
 * (2010) 188-197.
 *
 * @param drift μ, in a unit of time; {@code NaN} without increments
 * @param shape λ; infinite if all increments are in proportion to their duration
 */
public record InverseGaussianProcess(double drift, double shape) {

    /**
     * Fits increments of one or many paths by maximum likelihood; those with a {@code NaN} or without duration are skipped.
     *
     * @param durations of the increments
     * @return {@code NaN} for the shape if an increment is not above 0: the process cannot have made it
     */
    public static InverseGaussianProcess fit(double[] durations, double[] increments) {
        Increments steps = Increments.of(durations, increments);
        double drift = steps.rate();
        double sum = 0;
        for (int i = 0; i < steps.count(); i++) {
            double gain = steps.gains()[i];
            double off = gain - drift * steps.durations()[i];
            sum += gain > 0 ? off * off / (drift * drift * gain) : Double.NaN;
        }
        return new InverseGaussianProcess(drift, steps.count() / sum);
    }
}
