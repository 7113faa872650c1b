package org.ohmstead.reports.render;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** One value of a table: words, a day, a whole number, or nothing. */
public sealed interface Cell {

    Cell NONE = new Words("");

    record Words(String text) implements Cell {}

    record Day(LocalDate date) implements Cell {}

    record Count(long number) implements Cell {}

    static Cell of(@Nullable String text) {
        return text == null || text.isEmpty() ? NONE : new Words(text);
    }

    static Cell of(@Nullable LocalDate date) {
        return date == null ? NONE : new Day(date);
    }

    static Cell of(long number) {
        return new Count(number);
    }

    /** As a person reads it; days as year-month-day. */
    default String shown() {
        if (this instanceof Day day) {
            return day.date().toString();
        }
        return this instanceof Count count ? Long.toString(count.number()) : ((Words) this).text();
    }
}
