package org.ohmstead.intake.check;

/**
 * Where the checks against a string's own history draw their lines. How sure the order of a walk must be stands in
 * {@code WalkJudge}.
 *
 * @param fewestJars with fewer jars neither the walk nor copying is looked at
 * @param copiedShare share of the jars that may show the very value of one earlier survey
 * @param alikeShare movement against an earlier survey, as a share of the string's habit, that is too little
 * @param alikeShareOfFew the same for strings of under {@code manyJars}
 * @param manyJars from which on a movement is known well
 * @param scatterFactor movement against the last surveys, as a multiple of the string's habit, that is too much
 * @param scatterAllowance what is added to a factor of one for so few jars, times the root of their number
 * @param scatterLeast movement below this is never too much, as a share of the value
 * @param digitJars jars that must be read before their last digits are looked at
 * @param digitShare share of the jars that may end in one digit
 * @param unevenJars jars that must be read before the evenness of their last digits is looked at
 * @param digitChance chance in measured values under which last digits are too uneven
 */
public record ForensicThresholds(
        int fewestJars,
        double copiedShare,
        double alikeShare,
        double alikeShareOfFew,
        int manyJars,
        double scatterFactor,
        double scatterAllowance,
        double scatterLeast,
        int digitJars,
        double digitShare,
        int unevenJars,
        double digitChance) {

    public static ForensicThresholds defaults() {
        return new ForensicThresholds(10, 0.9, 0.25, 0.15, 20, 2, 7, 0.03, 10, 0.6, 40, 0.0005);
    }

    double alikeShareOf(int jars) {
        return jars < manyJars ? alikeShareOfFew : alikeShare;
    }

    double scatterFactorOf(int jars) {
        return Math.max(scatterFactor, 1 + scatterAllowance / Math.sqrt(jars));
    }
}
