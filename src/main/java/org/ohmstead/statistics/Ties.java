package org.ohmstead.statistics;

/**
 * Sums over the groups of equal values of one variable, t being a group's size.
 *
 * @param pairs sum of t(t-1)
 * @param triples sum of t(t-1)(t-2)
 * @param fives sum of t(t-1)(2t+5)
 */
record Ties(double pairs, double triples, double fives) {

    private static final Ties NONE = new Ties(0, 0, 0);

    /** Counts the ties of values none of which is missing. */
    static Ties in(double[] values) {
        return ascends(values) ? NONE : inSorted(Present.sorted(values));
    }

    /** As days of surveys do. */
    private static boolean ascends(double[] values) {
        for (int i = 1; i < values.length; i++) {
            if (!(values[i] > values[i - 1])) {
                return false;
            }
        }
        return true;
    }

    private static Ties inSorted(double[] sorted) {
        double pairs = 0;
        double triples = 0;
        double fives = 0;
        int start = 0;
        for (int i = 1; i <= sorted.length; i++) {
            if (i == sorted.length || sorted[i] != sorted[start]) {
                double t = i - start;
                pairs += t * (t - 1);
                triples += t * (t - 1) * (t - 2);
                fives += t * (t - 1) * (2 * t + 5);
                start = i;
            }
        }
        return new Ties(pairs, triples, fives);
    }
}
