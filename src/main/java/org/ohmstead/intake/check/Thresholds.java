package org.ohmstead.intake.check;

/**
 * Where the checks draw their lines. Every default is in {@code docs/survey-files.md} with its source.
 *
 * @param closingShare a reading after the last jar below this share of the string's median link is a closing reading
 * @param closingMicroohms and so is one below this, whatever the links
 * @param slipFactor how far from a thousand a unit slip may lie, as a factor
 * @param gateLowOhmAmpereHours least ohmic value times rated capacity of one healthy lead-acid cell
 * @param gateHighOhmAmpereHours greatest such product
 * @param gateMarginBelow a value this many times under the lower gate is impossible
 * @param gateMarginAbove a value this many times over the upper gate is impossible
 * @param jarJumpFactor change of a jar against its own last value that is doubted
 * @param linkJumpFactor change of a link against its own last value that is doubted
 * @param tinyVoltsPerCell below this a cell is taken as not touched
 * @param ceilingVoltsPerCell above this a cell cannot be on float
 * @param voltsSumDoubt difference of the jars' sum from the string voltage that is doubted, as a share
 * @param voltsSumHold difference that holds the survey, as a share
 * @param clampShare difference of clamped from injected current that is doubted, as a share
 * @param rippleAmpsPerHundredAmpereHours ripple limit
 * @param coldestCelsius below this a temperature is not believable
 * @param warmestCelsius above this a temperature is not believable
 * @param baselineKelvin difference from the baseline survey's temperature that is doubted
 * @param clockMinutes how far ahead an instrument's clock may run
 * @param forensics lines of the checks against the string's own history
 */
public record Thresholds(
        double closingShare,
        double closingMicroohms,
        double slipFactor,
        double gateLowOhmAmpereHours,
        double gateHighOhmAmpereHours,
        double gateMarginBelow,
        double gateMarginAbove,
        double jarJumpFactor,
        double linkJumpFactor,
        double tinyVoltsPerCell,
        double ceilingVoltsPerCell,
        double voltsSumDoubt,
        double voltsSumHold,
        double clampShare,
        double rippleAmpsPerHundredAmpereHours,
        double coldestCelsius,
        double warmestCelsius,
        double baselineKelvin,
        int clockMinutes,
        ForensicThresholds forensics) {

    public static Thresholds defaults() {
        return new Thresholds(
                0.10,
                1.0,
                3,
                0.06,
                0.30,
                2,
                10,
                2,
                3,
                0.1,
                2.9,
                0.01,
                0.03,
                0.05,
                5,
                -20,
                60,
                5,
                15,
                ForensicThresholds.defaults());
    }
}
