package org.ohmstead.reports;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;

/** How often a report is sent: once in each week, month or quarter. */
public enum Rhythm {
    WEEKLY("every week") {
        @Override
        LocalDate periodOf(LocalDate day) {
            return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        }
    },
    MONTHLY("every month") {
        @Override
        LocalDate periodOf(LocalDate day) {
            return day.withDayOfMonth(1);
        }
    },
    QUARTERLY("every quarter") {
        @Override
        LocalDate periodOf(LocalDate day) {
            return day.with(IsoFields.DAY_OF_QUARTER, 1);
        }
    };

    private final String words;

    Rhythm(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The first day of the period that the day lies in. */
    abstract LocalDate periodOf(LocalDate day);
}
