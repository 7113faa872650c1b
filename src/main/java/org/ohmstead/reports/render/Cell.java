package org.ohmstead.reports.render;

import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** One value of a table: words, a day, a number, or nothing. The unit of a number stands in its column's title. */
public sealed interface Cell {

    Cell NONE = new Words("");

    record Words(String text) implements Cell {}

    record Day(LocalDate date) implements Cell {}

    record Count(long number) implements Cell {}

    /** @param decimals shown after the point */
    record Figure(double number, int decimals) implements Cell {}

    static Cell of(@Nullable String text) {
        return text == null || text.isEmpty() ? NONE : new Words(text);
    }

    static Cell of(@Nullable LocalDate date) {
        return date == null ? NONE : new Day(date);
    }

    static Cell of(long number) {
        return new Count(number);
    }

    /** @param number what was not measured, null or NaN, is nothing */
    static Cell of(@Nullable Double number, int decimals) {
        return number == null || !Double.isFinite(number) ? NONE : new Figure(number, decimals);
    }

    /** As a person reads it; days as year-month-day. */
    default String shown() {
        if (this instanceof Day day) {
            return day.date().toString();
        }
        if (this instanceof Figure figure) {
            String shown = String.format(Locale.ROOT, "%." + figure.decimals() + "f", figure.number());
            return shown.matches("-0(\\.0*)?") ? shown.substring(1) : shown;
        }
        return this instanceof Count count ? Long.toString(count.number()) : ((Words) this).text();
    }
}
