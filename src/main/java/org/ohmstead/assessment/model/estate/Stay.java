package org.ohmstead.assessment.model.estate;

/**
 * How long jars of a type stayed at their place.
 *
 * @param years in service
 * @param end how it ended
 * @param count how many jars share both
 */
public record Stay(double years, End end, int count) {

    /** How a stay ended. */
    public enum End {
        /** It is there still. */
        GOES_ON,
        /** Taken out for its condition. */
        FAILED,
        /** Taken out alone or with few others, and nobody wrote down why: taken for failed. */
        UNEXPLAINED,
        /** Taken out for another reason, or with most of its string. */
        TAKEN_OUT
    }

    public boolean isFailure() {
        return end == End.FAILED || end == End.UNEXPLAINED;
    }
}
