package org.ohmstead.intake.forensics;

import java.util.ArrayList;
import java.util.List;

/** The pairs of jars whose readings would fit better the other way round. */
final class SwapScan {

    /** A pair worth weighing must gain at least this much log likelihood. */
    private static final double PROMISING = 4;

    private SwapScan() {}

    record Pair(int one, int other) {}

    static List<Pair> promising(List<Series> survey, List<Pattern> patterns, int jars) {
        double[][] centred = new double[survey.size()][];
        for (int c = 0; c < survey.size(); c++) {
            centred[c] = centred(survey.get(c), patterns.get(c), jars);
        }
        List<Pair> pairs = new ArrayList<>();
        for (int one = 1; one < jars; one++) {
            for (int other = one + 1; other <= jars; other++) {
                if (gain(centred, survey, patterns, one - 1, other - 1) > PROMISING) {
                    pairs.add(new Pair(one, other));
                }
            }
        }
        return pairs;
    }

    private static double[] centred(Series series, Pattern pattern, int jars) {
        double[] residuals = Fit.residuals(series, pattern, Walk.inOrder(jars));
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] += pattern.mean(i);
        }
        return residuals;
    }

    private static double gain(double[][] centred, List<Series> survey, List<Pattern> patterns, int one, int other) {
        double gain = 0;
        for (int c = 0; c < centred.length; c++) {
            if (survey.get(c).places() == Series.Places.JARS) {
                gain += gain(centred[c], patterns.get(c), one, other);
            }
        }
        return gain;
    }

    private static double gain(double[] values, Pattern pattern, int one, int other) {
        double atOne = values[one];
        double atOther = values[other];
        if (Double.isNaN(atOne) || Double.isNaN(atOther)) {
            return 0;
        }
        return log(atOther, pattern, one)
                + log(atOne, pattern, other)
                - log(atOne, pattern, one)
                - log(atOther, pattern, other);
    }

    private static double log(double value, Pattern pattern, int place) {
        return Fit.logDensity(value - pattern.mean(place), pattern.deviation(place));
    }
}
