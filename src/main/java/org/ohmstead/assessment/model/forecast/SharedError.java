package org.ohmstead.assessment.model.forecast;

/**
 * What other strings read on the same day tell about the error of this survey's instrument, logarithmic.
 *
 * @param mean expected error; 0.03 means that all readings are 3 % high
 * @param variance how uncertain that is, besides the error that is the survey's own
 */
public record SharedError(double mean, double variance) {
    /** Nothing is known. */
    public static final SharedError UNKNOWN = new SharedError(0, 0);
}
