package org.ohmstead.assessment.model;

import org.jspecify.annotations.Nullable;

/**
 * Figures of the string as a whole. Null where there is nothing to say. Estimates, never a proof of capacity: an ohmic
 * value read with an alternating current is not the resistance a discharge meets.
 *
 * @param totalJarMilliohms sum over the jars, the missing ones taken as the median; null for conductance
 * @param totalLinkMicroohms sum over the links, the missing ones left out
 * @param voltageStepVolts estimate of the step when the design current sets in, jars and links together
 * @param weakestPosition jar with the largest rise
 * @param weakestLink link with the largest rise over its baseline, else over its kind
 * @param scatter robust spread of the jars in the last survey, as a share of the median
 * @param shareNearLimit share of the jars at or beyond the note limit over their baseline
 * @param medianRise median of the jars' rises over their own baselines
 * @param expectedYears design life, derated by the temperature it lives in
 * @param lifeUsed age as a share of the expected life
 */
public record StringFigures(
        @Nullable Double totalJarMilliohms,
        @Nullable Double totalLinkMicroohms,
        @Nullable Double voltageStepVolts,
        @Nullable Integer weakestPosition,
        @Nullable Integer weakestLink,
        @Nullable Double scatter,
        @Nullable Double shareNearLimit,
        @Nullable Double medianRise,
        @Nullable Double floatVoltsPerCell,
        @Nullable Double expectedFloatVoltsPerCell,
        @Nullable Double rippleAmpsPer100Ah,
        @Nullable Double usualCelsius,
        double ageYears,
        @Nullable Double expectedYears,
        @Nullable Double lifeUsed) {}
