package org.ohmstead.testbed;

/**
 * The hidden truth of one jar or link from the day it was fitted: its rise over new as a function of its age, and when it
 * fails.
 */
abstract class Course {
    static final double HORIZON = 30;
    private static final double STEP = 1 / 50.0;
    /** Looked for once: whoever simulates asks at every visit. */
    private double ownCrossing = Double.NaN;

    /** Logarithm of the reading over new at an age in years, without any error. */
    abstract double rise(double age);

    /** Volts per cell that are missing at an age. */
    double voltsMissing(double age) {
        return 0;
    }

    /** Age at which something sudden ends it, infinite when nothing does. */
    double suddenEnd() {
        return Double.POSITIVE_INFINITY;
    }

    /** Its own limit of the rise. */
    abstract double limit();

    /** Age at which it no longer serves. */
    double failure() {
        if (Double.isNaN(ownCrossing)) {
            ownCrossing = crossing(limit());
        }
        return Math.min(suddenEnd(), ownCrossing);
    }

    /** Age at which the rise first passes a limit, infinite when beyond 30 years. */
    double crossing(double limit) {
        for (double age = 0; age < HORIZON; age += STEP) {
            if (rise(age) > limit) {
                return age;
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
