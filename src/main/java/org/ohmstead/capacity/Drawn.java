package org.ohmstead.capacity;

import org.jspecify.annotations.Nullable;

/**
 * What was drawn and what was left, as typed or as a record came to.
 *
 * @param jarEndVolts per position, NaN where not read; empty when no jar was read
 * @param jarMinutes per position until the jar reached its own end voltage, NaN where it did not; empty without a record
 */
public record Drawn(
        double amps,
        double minutes,
        boolean stoppedEarly,
        @Nullable Double stringEndVolts,
        double[] jarEndVolts,
        double[] jarMinutes) {}
