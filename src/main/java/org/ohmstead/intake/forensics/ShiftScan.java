package org.ohmstead.intake.forensics;

import java.util.List;

/**
 * The log likelihood of every possible skip and double reading against the walk in order, in one pass: from a certain
 * line on each reading is weighed as its neighbour's.
 */
final class ShiftScan {

    private final double[] skipGain;
    private final double[] doubleGain;

    private ShiftScan(int jars) {
        skipGain = new double[jars + 2];
        doubleGain = new double[jars + 2];
    }

    static ShiftScan of(List<Series> survey, List<Pattern> patterns, int jars) {
        ShiftScan scan = new ShiftScan(jars);
        for (int c = 0; c < survey.size(); c++) {
            scan.add(survey.get(c), patterns.get(c), jars);
        }
        return scan;
    }

    private void add(Series series, Pattern pattern, int jars) {
        double[] inOrder = gainOver(series, pattern, Walk.inOrder(jars));
        double[] early = gainOver(series, pattern, Walk.skipping(0, jars));
        double[] late = gainOver(series, pattern, Walk.readingTwice(0, jars));
        int offset = series.places() == Series.Places.JARS ? 0 : 1;
        double skipSum = 0;
        double doubleSum = 0;
        for (int line = jars; line >= 1; line--) {
            int i = line - 1 + offset;
            // lines from the skipped jar on; lines after the jar read twice
            doubleGain[line] += doubleSum;
            if (i < inOrder.length) {
                skipSum += early[i] - inOrder[i];
                doubleSum += late[i] - inOrder[i];
            }
            skipGain[line] += skipSum;
        }
    }

    /** Per index: log likelihood of the reading under the walk; 0 where it can't be weighed. */
    private static double[] gainOver(Series series, Pattern pattern, Walk walk) {
        double[] inOrder = Fit.residuals(series, pattern, Walk.inOrder(walk.jars()));
        double[] values = series.values();
        double level = level(values, inOrder, pattern);
        double[] gains = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            int place = walk.placeOf(series.places(), i);
            if (place >= 0 && place < pattern.size() && !Double.isNaN(inOrder[i])) {
                gains[i] = Fit.logDensity(values[i] - pattern.mean(place) - level, pattern.deviation(place));
            }
        }
        return gains;
    }

    private static double level(double[] values, double[] inOrder, Pattern pattern) {
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(inOrder[i])) {
                return values[i] - pattern.mean(i) - inOrder[i];
            }
        }
        return 0;
    }

    double skipGain(int jar) {
        return skipGain[jar];
    }

    double doubleGain(int jar) {
        return doubleGain[jar];
    }
}
