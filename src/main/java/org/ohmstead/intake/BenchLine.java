package org.ohmstead.intake;

import org.jspecify.annotations.Nullable;

/**
 * A jar with the link after it, as the survey stands, beside what the string's last surveys let expect. Null is not
 * measured, or not known.
 *
 * @param line of the file that the jar's values stand on; 0 when on none
 * @param linkMicroohms mean of its straps
 */
public record BenchLine(
        int position,
        int line,
        @Nullable Double ohmic,
        @Nullable Double ohmicExpected,
        @Nullable Double volts,
        @Nullable Double celsius,
        @Nullable Double linkMicroohms,
        @Nullable Double linkExpected) {}
