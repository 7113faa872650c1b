package org.ohmstead.programme.rules;

import java.time.LocalDate;

/**
 * How much time a requirement allows from one completion to the next, and how it is counted.
 *
 * @param count 1 or more of the unit
 */
public record Interval(int count, Unit unit, Counting counting) {

    public enum Unit {
        MONTHS,
        YEARS
    }

    public Interval {
        if (count < 1) {
            throw new IllegalArgumentException("An interval has at least one month, not " + count);
        }
        if (counting == Counting.END_OF_YEAR && unit != Unit.YEARS) {
            throw new IllegalArgumentException("Counting to the end of a year needs years, not " + count + " months");
        }
        if (counting == Counting.FIXED_CALENDAR_QUARTER && months(count, unit) % 3 != 0) {
            throw new IllegalArgumentException(
                    "Counting in calendar quarters needs whole quarters, not " + months(count, unit) + " months");
        }
    }

    public static Interval ofMonths(int count, Counting counting) {
        return new Interval(count, Unit.MONTHS, counting);
    }

    public static Interval ofYears(int count, Counting counting) {
        return new Interval(count, Unit.YEARS, counting);
    }

    /** The last day that is still in time. */
    public LocalDate dueAfter(LocalDate done) {
        return counting.dueAfter(done, this);
    }

    public int months() {
        return months(count, unit);
    }

    /**
     * The owner's shorter interval, counted in the same way where that is possible and to the end of the month
     * otherwise; never due later than this one.
     *
     * @throws IllegalArgumentException when it is not shorter
     */
    public Interval shortenedTo(int months) {
        if (months < 1 || months >= months()) {
            throw new IllegalArgumentException("The owner's own interval must be shorter than " + words() + ": "
                    + (months() == 1 ? "there is none." : "1 to " + (months() - 1) + " months."));
        }
        boolean wholeQuarters = counting == Counting.FIXED_CALENDAR_QUARTER && months % 3 == 0;
        return ofMonths(months, wholeQuarters || counting == Counting.TO_THE_DAY ? counting : Counting.END_OF_MONTH);
    }

    /** "4 calendar months", "1 year to the day", "every calendar quarter". */
    public String words() {
        return counting.words(this);
    }

    String amount(String adjective) {
        String noun = unit == Unit.MONTHS ? "month" : "year";
        return count + " " + adjective + noun + (count == 1 ? "" : "s");
    }

    private static int months(int count, Unit unit) {
        return unit == Unit.YEARS ? Math.multiplyExact(count, 12) : count;
    }
}
