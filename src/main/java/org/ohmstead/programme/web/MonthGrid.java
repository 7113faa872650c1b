package org.ohmstead.programme.web;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.ohmstead.programme.RoundView;

/** A month as weeks from Monday to Sunday, the days of its neighbours left blank. */
final class MonthGrid {

    private MonthGrid() {}

    /** @param inside whether the day belongs to the month */
    public record Day(LocalDate on, boolean inside, List<RoundView> rounds) {}

    static List<List<Day>> of(YearMonth month, List<RoundView> rounds) {
        LocalDate day = month.atDay(1);
        day = day.minusDays(day.getDayOfWeek().getValue() - 1L);
        List<List<Day>> weeks = new ArrayList<>();
        while (!day.isAfter(month.atEndOfMonth())) {
            List<Day> week = new ArrayList<>();
            for (int i = 0; i < 7; i++) {
                LocalDate on = day.plusDays(i);
                week.add(new Day(
                        on,
                        YearMonth.from(on).equals(month),
                        rounds.stream()
                                .filter(round -> round.plannedOn().equals(on))
                                .toList()));
            }
            weeks.add(week);
            day = day.plusDays(7);
        }
        return weeks;
    }
}
