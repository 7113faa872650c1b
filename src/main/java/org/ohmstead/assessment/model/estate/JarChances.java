package org.ohmstead.assessment.model.estate;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What the forecast says of a jar as of its string's last survey.
 *
 * @param beyondLimit chance that it is past its limit already
 * @param withinYear chance of failing within twelve months if it has not failed yet
 * @param early day by which it crosses its limit with a chance of one in ten; null beyond fifteen years
 * @param middle the same for one in two
 * @param late the same for nine in ten
 */
public record JarChances(
        LocalDate asOf,
        double beyondLimit,
        double withinYear,
        @Nullable LocalDate early,
        @Nullable LocalDate middle,
        @Nullable LocalDate late) {}
