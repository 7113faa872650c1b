package org.ohmstead.intake.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads dates and times: year-month-day, then the time of day, then perhaps an offset. Years 1900 to 2099. */
public final class TimeText {

    private static final Pattern DATE = Pattern.compile("(?:19|20)\\d{2}-\\d{2}-\\d{2}");
    private static final Pattern TIME = Pattern.compile(
            "((?:19|20)\\d{2}-\\d{2}-\\d{2})[T ](\\d{2}:\\d{2}(?::\\d{2})?)(?:\\.\\d{1,9})? ?(Z|[+-]\\d{2}:?\\d{2})?");

    private TimeText() {}

    static Optional<LocalDate> date(String text) {
        try {
            return DATE.matcher(text).matches() ? Optional.of(day(text)) : Optional.empty();
        } catch (DateTimeException notInTheCalendar) {
            return Optional.empty();
        }
    }

    static Optional<TakenAt> time(String text) {
        Matcher parts = TIME.matcher(text);
        try {
            return parts.matches() ? Optional.of(joined(parts)) : Optional.empty();
        } catch (DateTimeException notInTheCalendar) {
            return Optional.empty();
        }
    }

    /** A bare date stands for noon of that day: the hour furthest from its neighbours. */
    static TakenAt noon(LocalDate date) {
        return new TakenAt(date.atTime(LocalTime.NOON), null);
    }

    /** year-month-day, each of as many digits as usual */
    private static LocalDate day(String text) {
        return LocalDate.of(number(text, 0, 4), number(text, 5, 7), number(text, 8, 10));
    }

    private static LocalTime timeOfDay(String text) {
        return LocalTime.of(number(text, 0, 2), number(text, 3, 5), text.length() > 5 ? number(text, 6, 8) : 0);
    }

    private static int number(String text, int from, int until) {
        return Integer.parseInt(text, from, until, 10);
    }

    private static TakenAt joined(Matcher parts) {
        LocalDateTime written = LocalDateTime.of(day(parts.group(1)), timeOfDay(parts.group(2)));
        String offset = parts.group(3);
        return new TakenAt(written, offset == null ? null : ZoneOffset.of(offset));
    }
}
