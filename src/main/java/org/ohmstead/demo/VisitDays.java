package org.ohmstead.demo;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The days on which a site was walked through with the checklist: within four calendar months of each other but for a
 * few that slipped. Sundays are free.
 */
final class VisitDays {

    /** Nobody went to this site in time, and nobody has been there since. */
    static final int MISSED_SITE = 14;
    /** Nor to this one, where the duties are waived. */
    static final int WAIVED_SITE = 22;

    private static final int MONTHS_BETWEEN = 4;
    private static final double SLIPS = 0.05;
    private static final long SEED = 0xD0715L;

    private VisitDays() {}

    /** Oldest first, the last one before today. */
    static List<LocalDate> of(int site, LocalDate since, LocalDate today) {
        Random random = new Random(SEED + site);
        LocalDate day = since.plusDays(5L + random.nextInt(80));
        List<LocalDate> days = new ArrayList<>();
        while (day.isBefore(today)) {
            days.add(working(day));
            day = next(day, random);
        }
        return isNeglected(site) ? withoutLatest(days, today) : caughtUp(days, today);
    }

    static boolean isNeglected(int site) {
        return site == MISSED_SITE || site == WAIVED_SITE;
    }

    private static LocalDate next(LocalDate day, Random random) {
        YearMonth last = YearMonth.from(day).plusMonths(MONTHS_BETWEEN);
        return random.nextDouble() < SLIPS
                ? last.plusMonths(1).atDay(2 + random.nextInt(14))
                : last.minusMonths(random.nextInt(2)).atDay(1 + random.nextInt(26));
    }

    /** The last visit so long ago that the next was due some weeks ago. */
    private static List<LocalDate> withoutLatest(List<LocalDate> days, LocalDate today) {
        YearMonth latest = YearMonth.from(today).minusMonths(MONTHS_BETWEEN + 1L);
        return days.stream().filter(day -> !YearMonth.from(day).isAfter(latest)).toList();
    }

    /** Nothing else is overdue today. */
    private static List<LocalDate> caughtUp(List<LocalDate> days, LocalDate today) {
        YearMonth earliest = YearMonth.from(today).minusMonths(MONTHS_BETWEEN);
        LocalDate last = days.get(days.size() - 1);
        if (YearMonth.from(last).isBefore(earliest)) {
            days.add(working(today.minusDays(3)));
        }
        return days;
    }

    private static LocalDate working(LocalDate day) {
        return day.getDayOfWeek() == java.time.DayOfWeek.SUNDAY ? day.minusDays(1) : day;
    }
}
