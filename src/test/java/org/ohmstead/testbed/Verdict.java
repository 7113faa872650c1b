package org.ohmstead.testbed;

/**
 * What one method said of one unit as of one survey, beside the truth.
 *
 * @param yearsToFailure infinite when it does not fail within 30 years
 * @param yearsToCrossing of the nominal limit; negative when crossed
 * @param score higher is worse
 * @param probability NaN for methods that give none
 * @param low years ahead before which it crosses with 10 %, NaN for methods that give none
 * @param middle with 50 %
 * @param high with 90 %
 */
record Verdict(
        int string,
        Truth truth,
        double yearsToFailure,
        double yearsToCrossing,
        double score,
        double probability,
        double low,
        double middle,
        double high) {

    static Verdict of(int string, Truth truth, double now, double score) {
        double none = Double.NaN;
        double opinion = Double.isNaN(score) ? -1e9 : score;
        return new Verdict(
                string, truth, truth.failsAt() - now, truth.crossesAt() - now, opinion, none, none, none, none);
    }

    Verdict with(double chance, double early, double median, double late) {
        return new Verdict(string, truth, yearsToFailure, yearsToCrossing, score, chance, early, median, late);
    }

    /** Units that have failed already are nobody's forecast. */
    boolean counts() {
        return yearsToFailure > 0;
    }

    boolean isFailing() {
        return yearsToFailure > 0 && yearsToFailure <= 1;
    }

    boolean intervalHolds() {
        return yearsToCrossing >= low && yearsToCrossing <= high;
    }
}
