package org.ohmstead.kernel;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** Half-open range of dates: from the first day up to, but not including, the end; without an end it goes on. */
public record DateRange(LocalDate from, @Nullable LocalDate until) {

    public DateRange {
        if (until != null && !until.isAfter(from)) {
            throw new IllegalArgumentException("A range must end after it starts: " + from + " to " + until);
        }
    }

    public static DateRange startingOn(LocalDate from) {
        return new DateRange(from, null);
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(from) && (until == null || day.isBefore(until));
    }

    public boolean overlaps(DateRange other) {
        return (until == null || other.from.isBefore(until)) && (other.until == null || from.isBefore(other.until));
    }

    public boolean isOpenEnded() {
        return until == null;
    }

    /** The same range, ended on that day (the day itself no longer belongs to it). */
    public DateRange endedOn(LocalDate day) {
        return new DateRange(from, day);
    }
}
