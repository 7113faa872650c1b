package org.ohmstead.statistics;

/** A range of numbers, both ends included; an end may be infinite or, when nothing can be said, {@code NaN}. */
public record Interval(double lower, double upper) {

    /** The interval of which nothing is known. */
    public static final Interval UNKNOWN = new Interval(Double.NaN, Double.NaN);

    /** The interval that excludes nothing. */
    public static final Interval EVERYTHING = new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** Whether the value lies inside or on an end; never for {@code NaN}. */
    public boolean contains(double value) {
        return value >= lower && value <= upper;
    }

    /** From the lower to the upper end. */
    public double width() {
        return upper - lower;
    }

    static Interval around(double centre, double halfWidth) {
        return new Interval(centre - halfWidth, centre + halfWidth);
    }
}
