package org.ohmstead.intake.forensics;

import org.jspecify.annotations.Nullable;

/**
 * How the string was walked, as far as the readings tell.
 *
 * @param walk the likeliest walk
 * @param otherString the name under which another string was offered, when the readings are that string's
 * @param probability of the verdict, given that one of the weighed walks was taken
 * @param firstJar the place lies between this jar and {@code lastJar}, nine times in ten
 * @param sight what this survey and history can show at all
 */
public record WalkVerdict(
        Walk walk, @Nullable String otherString, double probability, int firstJar, int lastJar, Sight sight) {

    /** Whether each fault would be noticed if it were there; where not, its absence means nothing. */
    public record Sight(boolean reversal, boolean shiftInTheMiddle) {

        static final Sight NONE = new Sight(false, false);
    }

    public boolean isInOrder() {
        return otherString == null && walk.kind() == Walk.Kind.IN_ORDER;
    }

    static WalkVerdict cannotTell(int jars) {
        return new WalkVerdict(Walk.inOrder(jars), null, Double.NaN, 0, 0, Sight.NONE);
    }

    /** Whether anything at all could be weighed. */
    public boolean isBlind() {
        return Double.isNaN(probability);
    }
}
