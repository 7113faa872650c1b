package org.ohmstead.assessment.model.forecast;

/** A small multivariate normal state: level, rate and whatever else a filter carries. Changed in place. */
final class Gaussian {
    static final int LEVEL = 0;
    static final int RATE = 1;

    final double[] mean;
    private final double[] cov;
    private final int n;

    Gaussian(int dimension) {
        this(new double[dimension], new double[dimension * dimension]);
    }

    private Gaussian(double[] mean, double[] cov) {
        this.mean = mean;
        this.cov = cov;
        this.n = mean.length;
    }

    Gaussian copy() {
        return new Gaussian(mean.clone(), cov.clone());
    }

    double cov(int i, int j) {
        return cov[i * n + j];
    }

    /** Sets one component, independent of all others. */
    void set(int i, double value, double variance) {
        mean[i] = value;
        for (int j = 0; j < n; j++) {
            cov[i * n + j] = 0;
            cov[j * n + i] = 0;
        }
        cov[i * n + i] = variance;
    }

    void addVariance(int i, double variance) {
        cov[i * n + i] += variance;
    }

    /** x[i] becomes x[i] + factor · x[j]. */
    void addMultiple(int i, double factor, int j) {
        mean[i] += factor * mean[j];
        for (int k = 0; k < n; k++) {
            cov[i * n + k] += factor * cov[j * n + k];
        }
        for (int k = 0; k < n; k++) {
            cov[k * n + i] += factor * cov[k * n + j];
        }
    }

    /** White noise of this intensity on the rate, integrated over a time into level and rate. */
    void addIntegratedNoise(double intensity, double years) {
        cov[0] += intensity * years * years * years / 3;
        cov[1] += intensity * years * years / 2;
        cov[n] += intensity * years * years / 2;
        cov[n + 1] += intensity * years;
    }

    double sum(int i, int j) {
        return mean[i] + mean[j];
    }

    /** Variance of x[i] + x[j]. */
    double sumVariance(int i, int j) {
        return Math.max(0, cov(i, i) + 2 * cov(i, j) + cov(j, j));
    }

    /** Takes in a reading of x[i] + x[j]. */
    void observeSum(int i, int j, double value, double noiseVariance) {
        double innovation = value - sum(i, j);
        double variance = sumVariance(i, j) + noiseVariance;
        double[] gain = new double[n];
        for (int k = 0; k < n; k++) {
            gain[k] = (cov(k, i) + cov(k, j)) / variance;
        }
        for (int k = 0; k < n; k++) {
            mean[k] += gain[k] * innovation;
        }
        shrink(gain, variance);
    }

    private void shrink(double[] gain, double variance) {
        for (int r = 0; r < n; r++) {
            for (int c = 0; c < n; c++) {
                cov[r * n + c] -= gain[r] * gain[c] * variance;
            }
        }
    }

    void write(DoubleTape tape) {
        tape.putAll(mean);
        tape.putAll(cov);
    }

    static Gaussian read(DoubleTape tape, int dimension) {
        return new Gaussian(tape.take(dimension), tape.take(dimension * dimension));
    }
}
