package org.ohmstead.chart;

import java.time.LocalDate;
import java.util.List;

/**
 * One value over time.
 *
 * @param title what is shown, as a heading
 * @param unit of the values
 * @param days of the readings, in order
 * @param values one per day; NaN leaves a gap
 * @param levels lines to compare with, such as baseline and limit
 * @param breaks days on which something new begins (a replaced jar, a remade link): the line starts anew
 */
public record Trend(
        String title, String unit, List<LocalDate> days, double[] values, List<Level> levels, List<LocalDate> breaks) {

    /** @param limit whether to stay on one side of it, or just to compare */
    public record Level(String words, double value, boolean limit) {}

    public Trend {
        days = List.copyOf(days);
        levels = levels.stream().filter(level -> Double.isFinite(level.value())).toList();
        breaks = List.copyOf(breaks);
        if (days.size() != values.length) {
            throw new IllegalArgumentException("A trend has one value per day");
        }
    }
}
