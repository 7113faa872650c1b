package org.ohmstead.assessment.model;

import org.jspecify.annotations.Nullable;
import org.ohmstead.statistics.Interval;
import org.ohmstead.statistics.MedianSlopes;

/**
 * How fast a value rises: the median slope between all pairs of readings, as a share of the baseline per year, with its
 * 80 % range. The ends are null while there are too few readings for them.
 *
 * @param readings how many it rests on
 */
public record Trend(
        double perYear,
        @Nullable Double lowPerYear,
        @Nullable Double highPerYear,
        int readings) {

    private static final MedianSlopes SLOPES = new MedianSlopes(0.8);

    /**
     * @param years when each reading was taken, from any start
     * @param shares of the baseline
     * @return null with fewer readings than the limits ask for, or all of them on one day
     */
    static @Nullable Trend of(double[] years, double[] shares, Limits limits) {
        if (years.length < limits.of(Limit.TREND_LEAST)) {
            return null;
        }
        MedianSlopes.MedianSlope line = SLOPES.of(years, shares);
        if (!Double.isFinite(line.slope())) {
            return null;
        }
        Interval range = line.interval();
        return new Trend(line.slope(), Numbers.orNull(range.lower()), Numbers.orNull(range.upper()), years.length);
    }
}
