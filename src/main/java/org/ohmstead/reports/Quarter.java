package org.ohmstead.reports;

import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmstead.kernel.Refused;

/** A calendar quarter, written 2026-Q3. */
public record Quarter(int year, int number) {

    private static final Pattern WRITTEN = Pattern.compile("(\\d{4})-Q([1-4])");

    public Quarter {
        if (number < 1 || number > 4) {
            throw new IllegalArgumentException("There is no quarter " + number);
        }
    }

    /** @throws Refused when it is not written so */
    public static Quarter parse(String text) {
        Matcher matcher = WRITTEN.matcher(text);
        if (!matcher.matches()) {
            throw new Refused("\"" + text + "\" is no quarter. Write year and quarter: 2026-Q3.");
        }
        return new Quarter(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
    }

    public static Quarter of(LocalDate day) {
        return new Quarter(day.getYear(), (day.getMonthValue() + 2) / 3);
    }

    public LocalDate first() {
        return LocalDate.of(year, 3 * number - 2, 1);
    }

    public LocalDate last() {
        return first().plusMonths(3).minusDays(1);
    }

    public Quarter before() {
        return of(first().minusDays(1));
    }

    public Quarter after() {
        return of(last().plusDays(1));
    }

    @Override
    public String toString() {
        return year + "-Q" + number;
    }
}
