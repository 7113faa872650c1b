package org.ohmstead.assessment;

import org.jspecify.annotations.Nullable;

/**
 * How far the forecast has followed a string.
 *
 * @param fingerprint over all that it has seen
 * @param state as it stores itself
 * @param surveyIds those with an instrument on record, oldest first
 * @param innovations how far their jars' centre lay from what was expected, logarithmic; null where nothing was
 * @param variances of what was expected
 */
record Followed(
        int surveys,
        byte[] fingerprint,
        byte[] state,
        Long[] surveyIds,
        @Nullable Double[] innovations,
        @Nullable Double[] variances) {}
