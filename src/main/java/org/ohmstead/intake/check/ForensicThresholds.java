package org.ohmstead.intake.check;

/**
 * Where the checks against a string's own history draw their lines. How sure the order of a walk must be stands in
 * {@code WalkJudge}.
 *
 * @param fewestJars with fewer jars neither the walk nor copying is looked at
 * @param copiedShare share of the jars that may show the very value of one earlier survey
 * @param alikeJars jars both surveys must have before they can be too alike
 * @param alikeShare scatter against the last survey, as a share of the string's habit, that is too little
 * @param scatterFactor scatter against the last survey, as a multiple of the string's habit, that is too much
 * @param scatterLeast scatter below this is never too much, as a share of the value
 * @param digitJars jars that must be read before their last digits are looked at
 * @param digitShare share of the jars that may end in one digit
 */
public record ForensicThresholds(
        int fewestJars,
        double copiedShare,
        int alikeJars,
        double alikeShare,
        double scatterFactor,
        double scatterLeast,
        int digitJars,
        double digitShare) {

    public static ForensicThresholds defaults() {
        return new ForensicThresholds(10, 0.9, 20, 0.25, 3, 0.03, 20, 0.6);
    }
}
