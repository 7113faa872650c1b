package org.ohmstead.capacity.model;

import org.jspecify.annotations.Nullable;

/**
 * How one jar came out of a capacity test.
 *
 * @param endVolts when the test ended; null when it was not read
 * @param ownMinutes until the jar itself reached its end voltage; null when it did not, or nobody read it on the way
 * @param ownPercent of rated capacity by {@code ownMinutes}; null without them
 */
public record JarResult(
        int position,
        @Nullable Double endVolts,
        @Nullable Double ownMinutes,
        @Nullable Double ownPercent,
        JarFinding finding,
        String reason) {}
