package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The forecast for one jar or link.
 *
 * @param number position 1..N of a jar, ordinal 0..N of a link
 * @param probability chance that it fails its purpose within twelve months, given that it has not failed yet
 * @param score the same without that condition: what flags are made of, and close to 1 for a unit beyond its limit
 * @param beyondLimit chance that it is beyond its limit already
 * @param early day before which it crosses its limit with a chance of 10 %; null when beyond the horizon of 15 years
 * @param median likewise with 50 %
 * @param late likewise with 90 %
 * @param riseOverNew expected rise over its own value when new, 0.12 means 12 %; for conductance the fall's reciprocal
 * @param ratePerYear its own and the string's rate together, logarithmic
 * @param goingWeight belief that it is in the regime that speeds up
 * @param shortWeight belief that a cell is shorted; 0 for links
 * @param pendingChange logarithmic distance of a reading set aside, NaN when there is none
 * @param renewedAround when work without record is suspected, null when not
 * @param stepped whether a sudden rise was confirmed by a second survey
 * @param readings since it was fitted or remade
 */
public record UnitForecast(
        int number,
        double probability,
        double score,
        boolean flagged,
        double beyondLimit,
        @Nullable LocalDate early,
        @Nullable LocalDate median,
        @Nullable LocalDate late,
        double riseOverNew,
        double ratePerYear,
        double goingWeight,
        double shortWeight,
        double pendingChange,
        @Nullable LocalDate renewedAround,
        boolean stepped,
        int readings,
        Set<DataDoubt> doubts) {

    public UnitForecast {
        doubts = Set.copyOf(doubts);
    }
}
