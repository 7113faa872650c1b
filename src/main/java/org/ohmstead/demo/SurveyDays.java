package org.ohmstead.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** The days on which a string was surveyed: Tuesdays to Fridays, so that a Monday is free for sample files. */
final class SurveyDays {

    private static final int YEARS_OF_HISTORY = 8;
    private static final int MONTHS_BEFORE_FIRST = 5;

    private SurveyDays() {}

    /** Oldest first; the last one some days ago, or so long ago that the next is as late as the story says. */
    static List<LocalDate> of(DemoString string, LocalDate today) {
        Random random = new Random(string.seed() ^ 0x5DA75L);
        int interval = string.entry().surveyIntervalMonths();
        LocalDate day = last(string.story(), interval, today, random);
        LocalDate first = string.entry().inServiceOn().plusMonths(MONTHS_BEFORE_FIRST);
        LocalDate horizon = today.minusYears(YEARS_OF_HISTORY);
        List<LocalDate> days = new ArrayList<>();
        while (day.isAfter(first) && day.isAfter(horizon)) {
            days.add(workingDay(day));
            day = day.minusMonths(interval).plusDays(random.nextInt(15) - 7L);
        }
        Collections.reverse(days);
        return days;
    }

    private static LocalDate last(Story story, int interval, LocalDate today, Random random) {
        int before = 4 + random.nextInt(interval * 30 - 40);
        return story.monthsLate() > 0
                ? today.minusMonths(interval + (long) story.monthsLate())
                : today.minusDays(before);
    }

    private static LocalDate workingDay(LocalDate day) {
        LocalDate working = day;
        while (working.getDayOfWeek() == DayOfWeek.SATURDAY
                || working.getDayOfWeek() == DayOfWeek.SUNDAY
                || working.getDayOfWeek() == DayOfWeek.MONDAY) {
            working = working.minusDays(1);
        }
        return working;
    }
}
