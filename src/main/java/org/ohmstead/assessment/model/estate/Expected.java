package org.ohmstead.assessment.model.estate;

import org.ohmstead.statistics.Interval;
import org.ohmstead.statistics.PoissonBinomial;

/**
 * How many jars are to be expected, and the range that holds the number four times in five if they fail independently of
 * each other.
 */
public record Expected(double expected, int low, int high) {

    /** Share of cases in which the range is meant to hold. */
    public static final double LEVEL = 0.8;

    static Expected of(PoissonBinomial law) {
        Interval range = law.interval(LEVEL);
        return new Expected(law.mean(), (int) range.lower(), (int) range.upper());
    }
}
