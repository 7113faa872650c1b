package org.ohmstead.assessment.model.estate;

import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.stream.Stream;

/** A quarter of a year, from its first day up to, but not including, the end. */
public record CalendarQuarter(LocalDate from, LocalDate until) {

    static CalendarQuarter of(LocalDate day) {
        LocalDate from = day.with(IsoFields.DAY_OF_QUARTER, 1);
        return new CalendarQuarter(from, from.plusMonths(3));
    }

    /** The quarter of that day and those after it. */
    public static List<CalendarQuarter> startingWith(LocalDate day, int count) {
        return Stream.iterate(of(day), quarter -> of(quarter.until()))
                .limit(count)
                .toList();
    }

    /** "Q4 2026". */
    public String title() {
        return "Q" + from.get(IsoFields.QUARTER_OF_YEAR) + " " + from.getYear();
    }
}
