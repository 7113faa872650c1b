package org.ohmstead.reports.render;

/**
 * A square of small squares, as a code that a telephone reads.
 *
 * @param says what it means, for those who can't see it
 * @param dark rows from the top
 */
public record Picture(String says, boolean[][] dark) {}
