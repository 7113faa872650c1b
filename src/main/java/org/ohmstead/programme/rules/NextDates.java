package org.ohmstead.programme.rules;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** The rule for a string's next date: the earlier of the owner's interval and a demanded re-measure. */
public final class NextDates {

    private NextDates() {}

    /**
     * Months are counted to the day. Where the month that is reached has no such day its last day is meant: six months
     * after 31 August is 28 February, or 29 February in a leap year, and the day after that is late. Each interval is
     * counted from the survey itself, so a day lost to a short month does not carry over.
     *
     * @param inServiceOn the interval counts from here while there is no survey
     * @param surveyedOn day of the last survey, null without any
     * @param intervalMonths the owner's own interval, 1 or more
     * @param recheckBy null when no judgement asks for another reading
     */
    public static NextDate next(
            LocalDate inServiceOn, @Nullable LocalDate surveyedOn, int intervalMonths, @Nullable LocalDate recheckBy) {
        if (intervalMonths < 1) {
            throw new IllegalArgumentException("An interval has at least one month, not " + intervalMonths);
        }
        LocalDate from = surveyedOn == null ? inServiceOn : surveyedOn;
        LocalDate byInterval = from.plusMonths(intervalMonths);
        if (recheckBy != null && recheckBy.isBefore(byInterval)) {
            String reason =
                    "A finding is to be read again by " + recheckBy + "; the interval would end on " + byInterval + ".";
            return new NextDate(recheckBy, NextDate.Governs.RECHECK, byInterval, recheckBy, reason);
        }
        String since = surveyedOn == null
                ? "it came into service on " + inServiceOn + " and has not been surveyed"
                : "its last survey on " + surveyedOn;
        String reason = months(intervalMonths) + " after " + since + ".";
        return new NextDate(byInterval, NextDate.Governs.INTERVAL, byInterval, recheckBy, reason);
    }

    private static String months(int count) {
        return count == 1 ? "1 month" : count + " months";
    }
}
