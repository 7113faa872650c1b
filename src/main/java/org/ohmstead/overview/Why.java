package org.ohmstead.overview;

import org.ohmstead.kernel.Urgency;

/**
 * A reason in words with numbers.
 *
 * @param wouldChange what would make the judgement another one
 */
public record Why(Urgency asks, String words, String wouldChange) {}
