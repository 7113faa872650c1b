package org.ohmstead.onsite;

import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Limit;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.intake.check.Thresholds;

/**
 * Where the device draws its lines while the crew is still there. They are those of the judgement and of the intake's
 * checks; the service's own judgement is final. Shares: 0.2 is 20 %.
 *
 * @param jarStep change of a jar since last time beyond the string's common change
 * @param linkRise rise of a link over its baseline, or over the average of its kind
 * @param unitSlip how far from ten or a thousand times the last value a slip of the unit or the decimal point may lie
 * @param lowestJarVolts below this the probes are reversed or do not touch
 * @param highestJarVolts above this a jar cannot be on float
 * @param clampShare difference of the clamped from the injected current
 * @param highestRippleAmps null when the rated capacity is not known
 * @param closingShare a closing reading is at most this share of the median link
 * @param closingMicroohms or at most this
 * @param clockMinutes how far ahead of the service a survey may lie
 */
public record WalkLimits(
        double jarStep,
        double linkRise,
        double unitSlip,
        double lowestJarVolts,
        double highestJarVolts,
        double clampShare,
        @Nullable Double highestRippleAmps,
        double closingShare,
        double closingMicroohms,
        double coldestCelsius,
        double warmestCelsius,
        int clockMinutes) {

    static WalkLimits of(Limits limits, Thresholds checks, int cellsPerJar, double ratedAmpereHours) {
        return new WalkLimits(
                limits.of(Limit.JAR_STEP),
                limits.of(Limit.LINK_RISE_ACT),
                checks.slipFactor(),
                Rounded.off(checks.tinyVoltsPerCell() * cellsPerJar),
                Rounded.off(checks.ceilingVoltsPerCell() * cellsPerJar),
                checks.clampShare(),
                ratedAmpereHours > 0
                        ? Rounded.off(checks.rippleAmpsPerHundredAmpereHours() * ratedAmpereHours / 100)
                        : null,
                checks.closingShare(),
                checks.closingMicroohms(),
                checks.coldestCelsius(),
                checks.warmestCelsius(),
                checks.clockMinutes());
    }
}
