package org.ohmstead.assessment.model;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What the forecast says of one jar or link.
 *
 * @param chanceWithinYear of failing its purpose within twelve months if it has not failed yet, 0 to 1
 * @param risk the same without that condition: near 1 for a unit that is past its limit; urgencies are made of it
 * @param beyondLimit chance that it is past its limit already
 * @param early the day by which it crosses its limit with a chance of one in ten; null beyond the horizon, and for links,
 *     whose dates cannot be trusted
 * @param middle the same for one in two
 * @param late the same for nine in ten
 * @param riseOverNew expected rise over its own value when new: 0.12 is 12 %
 * @param ratePerYear of that rise, logarithmic
 * @param trouble what the pattern suggests; null when nothing does
 */
public record UnitForecast(
        double chanceWithinYear,
        double risk,
        double beyondLimit,
        @Nullable LocalDate early,
        @Nullable LocalDate middle,
        @Nullable LocalDate late,
        double riseOverNew,
        double ratePerYear,
        @Nullable Trouble trouble) {}
