package org.ohmstead.intake;

import org.jspecify.annotations.Nullable;

/**
 * A jar, with the link after it, before and after a repair. Null is not measured.
 *
 * @param expected by the string's own pattern, at this survey's level
 */
public record MovedPlace(
        int position,
        @Nullable Double ohmic,
        @Nullable Double ohmicThen,
        @Nullable Double expected,
        @Nullable Double volts,
        @Nullable Double voltsThen,
        @Nullable Double linkMicroohms,
        @Nullable Double linkMicroohmsThen) {}
