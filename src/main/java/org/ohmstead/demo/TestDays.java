package org.ohmstead.demo;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;

/** The days of a string's capacity tests: where a survey lies not long before, in the week after it. */
final class TestDays {

    private static final int AFTER_SURVEY_DAYS = 8;
    private static final int LONG_DAYS = 200;

    private TestDays() {}

    /** Oldest first; what lies before the string came into service is left out. */
    static List<LocalDate> of(DemoString string, CapacityStory story, LocalDate today) {
        List<LocalDate> surveys = SurveyDays.of(string, today);
        return story.monthsAgo().stream()
                .map(months -> working(afterSurvey(surveys, today.minusMonths(months))))
                .filter(day -> day.isAfter(string.entry().inServiceOn().plusMonths(6)) && day.isBefore(today))
                .distinct()
                .toList();
    }

    private static LocalDate afterSurvey(List<LocalDate> surveys, LocalDate wanted) {
        return surveys.stream()
                .map(day -> day.plusDays(AFTER_SURVEY_DAYS))
                .filter(day -> !day.isAfter(wanted) && day.isAfter(wanted.minusDays(LONG_DAYS)))
                .reduce((first, second) -> second)
                .orElse(wanted);
    }

    private static LocalDate working(LocalDate day) {
        return day.getDayOfWeek() == DayOfWeek.SATURDAY
                ? day.minusDays(1)
                : day.getDayOfWeek() == DayOfWeek.SUNDAY ? day.minusDays(2) : day;
    }
}
