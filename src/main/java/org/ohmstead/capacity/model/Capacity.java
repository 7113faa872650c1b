package org.ohmstead.capacity.model;

/**
 * Percent of rated capacity.
 *
 * @param atLeast whether the test was stopped before the end voltage, so that the string holds this much or more
 * @param computation how it was worked out, with its numbers
 */
public record Capacity(double percent, boolean atLeast, String computation) {}
