package org.ohmstead.intake.forensics;

import java.util.List;
import org.ohmstead.statistics.Quantiles;

/**
 * How well a survey fits a pattern under a walk, as a log likelihood. Readings scatter by Student's t with five degrees
 * of freedom, so that a misprobe does not decide; the survey as a whole may be noisier than the string's habit.
 */
final class Fit {

    private static final double DEGREES = 5;
    /** Makes the median absolute deviation of t(5) that of a normal distribution of the same deviation. */
    private static final double T_SCALE = 0.928;

    private static final double[] NOISIER = {1, 1.3, 1.7, 2.2, 3};
    /** How far a survey's level strays from the last one's, in the series' own units, beyond its patterns' scatter. */
    private static final double LEVEL_STRAY = 0.08;

    private Fit() {}

    /** Of one reading, standardised. */
    static double logDensity(double residual, double deviation) {
        double scale = T_SCALE * deviation;
        double z = residual / scale;
        return -Math.log(scale) - (DEGREES + 1) / 2 * Math.log1p(z * z / DEGREES);
    }

    /** Of the whole survey: all its series, each with its own level and noise. */
    static double of(List<Series> survey, List<Pattern> patterns, Walk walk) {
        double sum = 0;
        for (int c = 0; c < survey.size(); c++) {
            sum += best(residuals(survey.get(c), patterns.get(c), walk), survey.get(c), patterns.get(c), walk);
        }
        return sum;
    }

    /** Of the survey's levels alone, given the last survey's: tells strings of different kinds apart. */
    static double ofLevels(List<Series> survey, List<Pattern> patterns) {
        double sum = 0;
        for (int c = 0; c < survey.size(); c++) {
            double stray =
                    Quantiles.median(survey.get(c).values()) - patterns.get(c).level();
            sum += Double.isNaN(stray) ? 0 : logDensity(stray, LEVEL_STRAY);
        }
        return sum;
    }

    /** Reading less what the walk's place would give, with the survey's level taken out. */
    static double[] residuals(Series series, Pattern pattern, Walk walk) {
        double[] values = series.values();
        double[] residuals = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            int place = walk.placeOf(series.places(), i);
            boolean known = place >= 0 && place < pattern.size();
            residuals[i] = known ? values[i] - pattern.mean(place) : Double.NaN;
        }
        double level = Quantiles.median(residuals);
        for (int i = 0; i < values.length; i++) {
            residuals[i] -= level;
        }
        return residuals;
    }

    private static double best(double[] residuals, Series series, Pattern pattern, Walk walk) {
        double best = Double.NEGATIVE_INFINITY;
        for (double noisier : NOISIER) {
            double sum = 0;
            for (int i = 0; i < residuals.length; i++) {
                if (!Double.isNaN(residuals[i])) {
                    int place = walk.placeOf(series.places(), i);
                    sum += logDensity(residuals[i], noisier * pattern.deviation(place));
                }
            }
            best = Math.max(best, sum);
        }
        return best;
    }
}
