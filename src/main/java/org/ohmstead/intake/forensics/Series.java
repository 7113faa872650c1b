package org.ohmstead.intake.forensics;

import java.util.Arrays;

/**
 * One quantity of one survey, walked along the string, on a scale where a survey-wide error is a shift: logarithms of
 * ohmic values and links, volts as they are. NaN where nothing was read.
 *
 * @param places what the values belong to: the jars 1..N or the links 0..N
 * @param values index 0 is jar 1, or link 0
 */
public record Series(Places places, double[] values) {

    /** What a series walks along. */
    public enum Places {
        JARS,
        LINKS
    }

    public static Series ofOhmicValues(double[] ohmic) {
        return new Series(Places.JARS, logarithms(ohmic));
    }

    public static Series ofVolts(double[] volts) {
        return new Series(Places.JARS, volts.clone());
    }

    /** @param microohms combined over parallel straps, per link 0..N */
    public static Series ofLinks(double[] microohms) {
        return new Series(Places.LINKS, logarithms(microohms));
    }

    private static double[] logarithms(double[] values) {
        return Arrays.stream(values).map(v -> v > 0 ? Math.log(v) : Double.NaN).toArray();
    }
}
