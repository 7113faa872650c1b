package org.ohmstead.assessment.model;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What the forecast says of one jar or link.
 *
 * @param chanceWithinYear of failing its purpose within twelve months, 0 to 1
 * @param early the day by which it crosses its limit with a chance of one in ten; null beyond the horizon
 * @param middle the same for one in two
 * @param late the same for nine in ten
 * @param trouble what the pattern suggests, in words; null when nothing does
 */
public record UnitForecast(
        double chanceWithinYear,
        @Nullable LocalDate early,
        @Nullable LocalDate middle,
        @Nullable LocalDate late,
        @Nullable String trouble) {}
