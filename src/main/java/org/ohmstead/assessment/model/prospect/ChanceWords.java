package org.ohmstead.assessment.model.prospect;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Chances and ranges of dates as people say them, no finer than they are known. */
public final class ChanceWords {

    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM", Locale.UK);
    private static final DateTimeFormatter MONTH_AND_YEAR = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.UK);

    private ChanceWords() {}

    /** "1 in 5", "7 in 10", "less than 1 in 100". */
    public static String of(double chance) {
        if (chance < 0.01) {
            return "less than 1 in 100";
        }
        if (chance >= 0.95) {
            return "more than 19 in 20";
        }
        long inTen = Math.round(chance * 10);
        return chance >= 0.55 ? inTen + " in 10" : "1 in " + Math.round(1 / chance);
    }

    /** For links, of which no more is known: "likely", "quite possible", "unlikely", "very unlikely". */
    public static String coarse(double chance) {
        return chance >= 0.5
                ? "likely"
                : chance >= 0.2 ? "quite possible" : chance >= 0.05 ? "unlikely" : "very unlikely";
    }

    /**
     * When a limit is passed, meant to hold four times in five: "between March and November 2027".
     *
     * @param early null beyond the horizon
     * @param late null beyond the horizon
     */
    public static String range(LocalDate asOf, @Nullable LocalDate early, @Nullable LocalDate late) {
        if (early == null) {
            return "not within fifteen years";
        }
        boolean begun = !early.isAfter(asOf);
        if (late == null) {
            return begun ? "perhaps already" : "not before " + MONTH_AND_YEAR.format(early);
        }
        if (!late.isAfter(asOf)) {
            return "already";
        }
        return begun ? "between now and " + MONTH_AND_YEAR.format(late) : between(early, late);
    }

    private static String between(LocalDate early, LocalDate late) {
        if (MONTH_AND_YEAR.format(early).equals(MONTH_AND_YEAR.format(late))) {
            return "in " + MONTH_AND_YEAR.format(late);
        }
        boolean sameYear = early.getYear() == late.getYear();
        return "between " + (sameYear ? MONTH : MONTH_AND_YEAR).format(early) + " and " + MONTH_AND_YEAR.format(late);
    }
}
