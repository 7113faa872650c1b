package org.ohmstead.programme.rounds;

import java.time.DayOfWeek;
import java.time.LocalDate;

/** Mondays to Fridays. Local holidays are not known here: a planned round is moved by hand. */
public final class Workdays {

    private Workdays() {}

    public static boolean isWorkday(LocalDate day) {
        return day.getDayOfWeek().getValue() <= DayOfWeek.FRIDAY.getValue();
    }

    /** The day itself or the last workday before it. */
    public static LocalDate onOrBefore(LocalDate day) {
        LocalDate found = day;
        while (!isWorkday(found)) {
            found = found.minusDays(1);
        }
        return found;
    }

    /** The day itself or the first workday after it. */
    public static LocalDate onOrAfter(LocalDate day) {
        LocalDate found = day;
        while (!isWorkday(found)) {
            found = found.plusDays(1);
        }
        return found;
    }

    /**
     * The last workday up to {@code latest}; where there is none since {@code earliest}, {@code latest} itself: rather
     * work on a Sunday than miss it.
     */
    static LocalDate latestBetween(LocalDate earliest, LocalDate latest) {
        LocalDate day = onOrBefore(latest);
        return day.isBefore(earliest) ? latest : day;
    }
}
