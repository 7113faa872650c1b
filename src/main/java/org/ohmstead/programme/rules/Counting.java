package org.ohmstead.programme.rules;

import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.time.temporal.IsoFields;

/** How an interval is counted. It belongs to each requirement, never to the whole service. Due days are inclusive. */
public enum Counting {
    /** The last day of the Nth month after the month of completion. */
    END_OF_MONTH {
        @Override
        LocalDate dueAfter(LocalDate done, Interval interval) {
            return YearMonth.from(done).plusMonths(interval.months()).atEndOfMonth();
        }

        @Override
        String words(Interval interval) {
            return interval.amount("calendar ");
        }
    },

    /** 31 December of the Nth year after the year of completion. */
    END_OF_YEAR {
        @Override
        LocalDate dueAfter(LocalDate done, Interval interval) {
            return LocalDate.of(done.getYear() + interval.count(), Month.DECEMBER, 31);
        }

        @Override
        String words(Interval interval) {
            return interval.amount("calendar ");
        }
    },

    /** N months later; where that month has no such day its last day is meant. */
    TO_THE_DAY {
        @Override
        LocalDate dueAfter(LocalDate done, Interval interval) {
            return done.plusMonths(interval.months());
        }

        @Override
        String words(Interval interval) {
            return interval.amount("") + " to the day";
        }
    },

    /** The last day of the calendar quarter that lies N months after the quarter of completion. */
    FIXED_CALENDAR_QUARTER {
        @Override
        LocalDate dueAfter(LocalDate done, Interval interval) {
            int quarter = done.get(IsoFields.QUARTER_OF_YEAR);
            return YearMonth.of(done.getYear(), 3 * quarter)
                    .plusMonths(interval.months())
                    .atEndOfMonth();
        }

        @Override
        String words(Interval interval) {
            int quarters = interval.months() / 3;
            return quarters == 1 ? "every calendar quarter" : "every " + quarters + " calendar quarters";
        }
    };

    abstract LocalDate dueAfter(LocalDate done, Interval interval);

    abstract String words(Interval interval);
}
