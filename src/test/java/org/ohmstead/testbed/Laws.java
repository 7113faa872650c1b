package org.ohmstead.testbed;

/**
 * The laws an invented estate lives by. None of them is the filter's own: the common rise is a power of time times a
 * frailty of each jar (the filter: a parabola, the same for all), dry-out grows exponentially and corrosion as a power
 * (the filter: constant acceleration), bad joints saturate (the filter: they speed up), readings have Student's tails and
 * probes a memory (the filter: independent normal errors), and instruments drift.
 *
 * @param strings number of strings
 * @param troublePerYear chance per year that a sound jar starts to dry out, corrode, short or open
 * @param bendLow smallest power of the common rise
 * @param bendHigh largest
 * @param frailty logarithmic spread of jars' common rise
 * @param limit rise at which a jar's capacity falls under 80 %, mean over types
 * @param limitOfType logarithmic spread of that between types
 * @param limitOfJar and between jars of a type
 * @param earlyDip logarithmic fall in the first two years, as plates form
 * @param stepwise whether trouble comes in jumps
 * @param neighbours chance that a neighbour catches the trouble too
 * @param unrecorded share of replacements and remakes nobody records
 * @param instrumentDay error shared by an instrument's strings of one day, standard deviation
 * @param instrumentDrift random walk of an instrument per square root of a year
 * @param surveyOwn error of one survey alone
 * @param jarNoise repeatability of jars, before heavy tails
 * @param linkNoise of links
 * @param misprobes share of readings that are plainly wrong
 * @param memory share of a reading's error that comes back at the next survey
 */
record Laws(
        int strings,
        double troublePerYear,
        double bendLow,
        double bendHigh,
        double frailty,
        double limit,
        double limitOfType,
        double limitOfJar,
        double earlyDip,
        boolean stepwise,
        double neighbours,
        double unrecorded,
        double instrumentDay,
        double instrumentDrift,
        double surveyOwn,
        double jarNoise,
        double linkNoise,
        double misprobes,
        double memory) {

    static Laws ordinary() {
        return new Laws(
                36, .016, 1.5, 3.2, .08, 1.33, .05, .06, 0, false, 0, .15, .018, .006, .008, .013, .035, .004, .15);
    }

    /** Ageing that slows down, trouble in jumps, spreading to neighbours, limits far off the assumed one. */
    static Laws jumpy() {
        return new Laws(
                36, .016, .6, 1.1, .25, 1.42, .10, .10, 0, true, .35, .15, .018, .006, .008, .013, .035, .004, .15);
    }

    /** A dip before the rise, drifting instruments, readings with a long memory, half of the work unrecorded. */
    static Laws drifting() {
        return new Laws(36, .016, 2.5, 5, .2, 1.33, .08, .08, .08, false, 0, .5, .03, .03, .02, .016, .045, .01, .5);
    }
}
