package org.ohmstead.assessment.model.estate;

import org.ohmstead.statistics.Interval;
import org.ohmstead.statistics.PoissonBinomial;

/**
 * How many jars are to be expected, and a range that should hold the number four times in five: that of jars which fail
 * independently of each other, widened for what all their chances may be wrong by together.
 */
public record Expected(double expected, int low, int high) {

    /** Share of cases in which the range is meant to hold. */
    public static final double LEVEL = 0.8;

    /** Jars of an estate share ageing, rooms and chargers, and one forecast: all chances may be off by a fifth alike. */
    static final double SHARED_ERROR = 0.2;

    private static final double NORMAL_90 = 1.281552;

    static Expected of(PoissonBinomial law) {
        Interval range = law.interval(LEVEL);
        double mean = law.mean();
        double shared = NORMAL_90 * SHARED_ERROR * mean;
        double low = mean - Math.hypot(Math.max(0, mean - range.lower()), shared);
        double high = mean + Math.hypot(Math.max(0, range.upper() - mean), shared);
        return new Expected(mean, Math.max(0, (int) Math.floor(low)), (int) Math.ceil(high));
    }
}
