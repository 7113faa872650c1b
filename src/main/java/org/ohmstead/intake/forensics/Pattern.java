package org.ohmstead.intake.forensics;

import java.util.Arrays;
import java.util.List;
import org.ohmstead.statistics.Quantiles;

/**
 * What a string's own history lets one expect of one quantity, place by place, after removing each survey's level.
 * Means are shrunk towards zero by how much of the scatter between places is lasting; the deviation holds what is not
 * known of the mean, the quantity's own repeatability, and a slow drift.
 */
final class Pattern {

    private static final double MAD_TO_DEVIATION = 1.4826;
    private static final int SURVEYS_USED = 6;

    private final Series.Places places;
    private final double level;
    private final double[] means;
    private final double[] deviations;

    private Pattern(Series.Places places, double level, double[] means, double[] deviations) {
        this.places = places;
        this.level = level;
        this.means = means;
        this.deviations = deviations;
    }

    /** @param history oldest first, at least two; values that are missing are NaN */
    static Pattern learn(List<Series> history) {
        List<Series> recent = history.subList(Math.max(0, history.size() - SURVEYS_USED), history.size());
        int size = recent.get(0).values().length;
        double[][] centred = recent.stream().map(s -> centre(s.values())).toArray(double[][]::new);
        double[] raw = new double[size];
        int[] counts = new int[size];
        for (int place = 0; place < size; place++) {
            raw[place] = mean(centred, place);
            counts[place] = count(centred, place);
        }
        double noise = noise(centred, raw);
        double lasting = lasting(raw, noise, recent.size());
        double lastLevel = median(recent.get(recent.size() - 1).values());
        return shrunk(recent.get(0).places(), lastLevel, raw, counts, noise, lasting);
    }

    private static Pattern shrunk(
            Series.Places places, double level, double[] raw, int[] counts, double noise, double lasting) {
        double[] means = new double[raw.length];
        double[] deviations = new double[raw.length];
        for (int place = 0; place < raw.length; place++) {
            double error = noise * noise / Math.max(1, counts[place]);
            double trust = counts[place] == 0 ? 0 : lasting * lasting / (lasting * lasting + error);
            means[place] = counts[place] == 0 ? 0 : trust * raw[place];
            double unknown = counts[place] == 0 ? lasting * lasting : trust * error;
            deviations[place] = Math.sqrt(noise * noise + unknown);
        }
        return new Pattern(places, level, means, deviations);
    }

    /** Repeatability: robust, because misprobes are part of life; degrees of freedom lost to the means given back. */
    private static double noise(double[][] centred, double[] means) {
        double[] residuals = new double[centred.length * means.length];
        int n = 0;
        for (double[] survey : centred) {
            for (int place = 0; place < means.length; place++) {
                double residual = survey[place] - means[place];
                if (!Double.isNaN(residual)) {
                    residuals[n++] = Math.abs(residual);
                }
            }
        }
        double lost = centred.length / (double) Math.max(1, centred.length - 1);
        double mad = n == 0 ? 0 : Quantiles.median(Arrays.copyOf(residuals, n));
        return Math.max(1e-4, MAD_TO_DEVIATION * mad * Math.sqrt(lost));
    }

    /** Scatter between places that lasts: of the means, less what noise alone would leave there. */
    private static double lasting(double[] means, double noise, int surveys) {
        double variance = 0;
        int n = 0;
        for (double mean : means) {
            if (!Double.isNaN(mean)) {
                variance += mean * mean;
                n++;
            }
        }
        double left = n == 0 ? 0 : variance / n - noise * noise / surveys;
        return Math.sqrt(Math.max(left, 1e-10));
    }

    private static double[] centre(double[] values) {
        double middle = median(values);
        return Arrays.stream(values).map(v -> v - middle).toArray();
    }

    static double median(double[] values) {
        double[] present = Arrays.stream(values).filter(v -> !Double.isNaN(v)).toArray();
        return present.length == 0 ? Double.NaN : Quantiles.median(present);
    }

    private static double mean(double[][] centred, int place) {
        double sum = 0;
        int n = count(centred, place);
        for (double[] survey : centred) {
            sum += Double.isNaN(survey[place]) ? 0 : survey[place];
        }
        return n == 0 ? Double.NaN : sum / n;
    }

    private static int count(double[][] centred, int place) {
        int n = 0;
        for (double[] survey : centred) {
            n += Double.isNaN(survey[place]) ? 0 : 1;
        }
        return n;
    }

    Series.Places places() {
        return places;
    }

    /** The level of the latest survey. */
    double level() {
        return level;
    }

    int size() {
        return means.length;
    }

    double mean(int place) {
        return means[place];
    }

    double deviation(int place) {
        return deviations[place];
    }
}
