package org.ohmstead.onsite;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A jar on the way.
 *
 * @param tier counted from 1 in the order of the positions
 * @param ohmic last reading of the jar that sits there now, in the walk's unit
 * @param lowest and highest: the range in which an ohmic value asks for nothing; null while there is no baseline
 * @param asks what the last judgement asks of it, in words; null when nothing
 */
public record JarPlace(
        int position,
        int tier,
        @Nullable String serial,
        @Nullable LocalDate readOn,
        @Nullable Double ohmic,
        @Nullable Double volts,
        @Nullable Double lowest,
        @Nullable Double highest,
        @Nullable String asks) {}
