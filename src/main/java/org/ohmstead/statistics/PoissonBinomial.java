package org.ohmstead.statistics;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The law of how many of several independent events happen, each with a chance of its own. Up to {@link #EXACT} chances
 * that are not 0 it is worked out by convolution; beyond, by the normal approximation refined with the skewness (Volkova,
 * Theory of Probability and its Applications 40 (1996) 791-794; Hong, Computational Statistics and Data Analysis 59 (2013)
 * 41-51).
 */
public final class PoissonBinomial {

    /** Beyond so many events the refined normal law is used. */
    static final int EXACT = 512;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    private double[] law = {1};
    private int events;
    private double mean;
    private double variance;
    private double thirdMoment;

    /** One more event; a chance outside 0 to 1 is cut to it, {@code NaN} is an event that is not known at all. */
    public void add(double chance) {
        double p = Math.max(0, Math.min(1, chance));
        if (!(p > 0)) {
            return;
        }
        events++;
        mean += p;
        variance += p * (1 - p);
        thirdMoment += p * (1 - p) * (1 - 2 * p);
        if (events <= EXACT) {
            convolve(p);
        }
    }

    private void convolve(double p) {
        double[] next = Arrays.copyOf(law, law.length + 1);
        for (int k = law.length; k > 0; k--) {
            next[k] = next[k] * (1 - p) + next[k - 1] * p;
        }
        next[0] *= 1 - p;
        law = next;
    }

    /** How many are expected to happen. */
    public double mean() {
        return mean;
    }

    public double variance() {
        return variance;
    }

    /** The chance that at most so many happen. */
    public double atMost(int count) {
        if (count < 0) {
            return 0;
        }
        if (count >= events) {
            return 1;
        }
        return events <= EXACT ? exactly(count) : refinedNormal(count);
    }

    private double exactly(int count) {
        double sum = 0;
        for (int k = 0; k <= count; k++) {
            sum += law[k];
        }
        return Math.min(1, sum);
    }

    private double refinedNormal(int count) {
        if (variance <= 0) {
            return count >= Math.round(mean) ? 1 : 0;
        }
        double sd = Math.sqrt(variance);
        double x = (count + 0.5 - mean) / sd;
        double skewness = thirdMoment / (sd * variance);
        double refined = NORMAL.cumulativeProbability(x) + skewness * (1 - x * x) * NORMAL.density(x) / 6;
        return Math.max(0, Math.min(1, refined));
    }

    /** The least number of which at most so many happen with that chance or more. */
    public int quantile(double share) {
        int low = 0;
        int high = events;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (atMost(middle) >= share) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** The central range that holds the number with that chance or more. */
    public Interval interval(double level) {
        return new Interval(quantile((1 - level) / 2), quantile((1 + level) / 2));
    }
}
