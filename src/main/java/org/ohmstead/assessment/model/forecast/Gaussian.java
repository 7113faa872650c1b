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
        if (n == 3) {
            observeOfThree(i, j, innovation, variance);
            return;
        }
        double[] gain = new double[n];
        for (int k = 0; k < n; k++) {
            gain[k] = (cov(k, i) + cov(k, j)) / variance;
        }
        for (int k = 0; k < n; k++) {
            mean[k] += gain[k] * innovation;
        }
        shrink(gain, variance);
    }

    /** The same for the states of single units, of which a string has more than a hundred. */
    private void observeOfThree(int i, int j, double innovation, double variance) {
        double a = (cov[i] + cov[j]) / variance;
        double b = (cov[3 + i] + cov[3 + j]) / variance;
        double c = (cov[6 + i] + cov[6 + j]) / variance;
        mean[0] += a * innovation;
        mean[1] += b * innovation;
        mean[2] += c * innovation;
        double ab = a * b * variance;
        double ac = a * c * variance;
        double bc = b * c * variance;
        cov[0] -= a * a * variance;
        cov[1] -= ab;
        cov[2] -= ac;
        cov[3] -= ab;
        cov[4] -= b * b * variance;
        cov[5] -= bc;
        cov[6] -= ac;
        cov[7] -= bc;
        cov[8] -= c * c * variance;
    }

    private void shrink(double[] gain, double variance) {
        for (int r = 0; r < n; r++) {
            for (int c = 0; c < n; c++) {
                cov[r * n + c] -= gain[r] * gain[c] * variance;
            }
        }
    }

    /** Becomes the normal law with the moments of a mixture: the other one with this weight, itself with the rest. */
    void mix(Gaussian other, double otherWeight) {
        if (n == 3) {
            mixThree(other, otherWeight);
            return;
        }
        double own = 1 - otherWeight;
        double[] apart = new double[n];
        for (int k = 0; k < n; k++) {
            apart[k] = other.mean[k] - mean[k];
        }
        for (int r = 0; r < n; r++) {
            for (int c = 0; c < n; c++) {
                int at = r * n + c;
                cov[at] = own * cov[at] + otherWeight * other.cov[at] + own * otherWeight * apart[r] * apart[c];
            }
        }
        for (int k = 0; k < n; k++) {
            mean[k] += otherWeight * apart[k];
        }
    }

    private void mixThree(Gaussian other, double otherWeight) {
        double own = 1 - otherWeight;
        double both = own * otherWeight;
        double[] cov = this.cov;
        double[] theirs = other.cov;
        double a = other.mean[0] - mean[0];
        double b = other.mean[1] - mean[1];
        double c = other.mean[2] - mean[2];
        cov[0] = own * cov[0] + otherWeight * theirs[0] + both * a * a;
        cov[1] = own * cov[1] + otherWeight * theirs[1] + both * a * b;
        cov[2] = own * cov[2] + otherWeight * theirs[2] + both * a * c;
        cov[3] = own * cov[3] + otherWeight * theirs[3] + both * b * a;
        cov[4] = own * cov[4] + otherWeight * theirs[4] + both * b * b;
        cov[5] = own * cov[5] + otherWeight * theirs[5] + both * b * c;
        cov[6] = own * cov[6] + otherWeight * theirs[6] + both * c * a;
        cov[7] = own * cov[7] + otherWeight * theirs[7] + both * c * b;
        cov[8] = own * cov[8] + otherWeight * theirs[8] + both * c * c;
        mean[0] += otherWeight * a;
        mean[1] += otherWeight * b;
        mean[2] += otherWeight * c;
    }

    void write(DoubleTape tape) {
        tape.putAll(mean);
        tape.putAll(cov);
    }

    static Gaussian read(DoubleTape tape, int dimension) {
        return new Gaussian(tape.take(dimension), tape.take(dimension * dimension));
    }
}
