package org.ohmstead.statistics;

import java.util.Arrays;

/**
 * Lifetimes, each known to lie in a range and counted a number of times: exact where both ends are equal, right-censored
 * where the upper end is infinite, left-censored where the lower is 0, else interval-censored.
 *
 * @param lower the last time each unit was known to live
 * @param upper the first time it was known to be dead
 * @param counts how many units share the range; 0 leaves it out
 */
public record Lifetimes(double[] lower, double[] upper, double[] counts) {

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if the lengths differ or a range is not 0 ≤ lower ≤ upper with upper above 0
     */
    public Lifetimes {
        if (lower.length != upper.length || lower.length != counts.length) {
            throw new IllegalArgumentException(
                    "lower has " + lower.length + " numbers, upper " + upper.length + ", counts " + counts.length);
        }
        for (int i = 0; i < lower.length; i++) {
            if (!(lower[i] >= 0 && upper[i] >= lower[i] && upper[i] > 0 && counts[i] >= 0)) {
                throw new IllegalArgumentException("lifetime " + i + " lies from " + lower[i] + " to " + upper[i]
                        + ", count " + counts[i] + "; wanted: 0 ≤ lower ≤ upper, upper > 0, count ≥ 0");
            }
        }
    }

    /** Failures at their times and survivors up to theirs, one of each. */
    public static Lifetimes rightCensored(double[] times, boolean[] failed) {
        double[] ones = new double[times.length];
        Arrays.fill(ones, 1);
        return rightCensored(times, failed, ones);
    }

    /** The same, each with its count. */
    public static Lifetimes rightCensored(double[] times, boolean[] failed, double[] counts) {
        double[] upper = new double[times.length];
        Arrays.setAll(upper, i -> failed[i] ? times[i] : Double.POSITIVE_INFINITY);
        return new Lifetimes(times.clone(), upper, counts);
    }

    /** How many ranges there are. */
    public int size() {
        return lower.length;
    }

    boolean exact(int i) {
        return lower[i] == upper[i];
    }

    boolean alive(int i) {
        return Double.isInfinite(upper[i]);
    }
}
