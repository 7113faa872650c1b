package org.ohmstead.testbed;

/**
 * What is true of one jar or link between being fitted and being taken out, in years of the string.
 *
 * @param index 0-based position of a jar, ordinal of a link
 * @param failsAt when it no longer serves, even if it was taken out before; infinite when beyond 30 years
 * @param crossesAt when its true rise passes the nominal limit
 * @param how what goes wrong with it
 */
record Truth(
        boolean link,
        int index,
        double from,
        double until,
        double failsAt,
        double crossesAt,
        String how,
        Course course) {
    boolean coversAt(double years) {
        return years >= from && years < until;
    }

    /** What somebody would forecast who saw the true rise and the true rate, but not the future. */
    double oracle(double years) {
        double age = years - from;
        double rise = course.rise(age);
        double rate = (rise - course.rise(Math.max(0, age - .25))) / .25;
        double nominal = Math.log(link ? 1.20 : 1.33);
        return rise + Math.max(0, rate) - nominal;
    }
}
