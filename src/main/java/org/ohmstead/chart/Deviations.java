package org.ohmstead.chart;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How far single values lie from what was expected, over time.
 *
 * @param title what is shown, as a heading
 * @param dots in any order
 * @param level what they say together; null when nothing
 */
public record Deviations(
        String title, List<Dot> dots, @Nullable Level level) {

    /** @param strong whether it is one of those that the level is made of */
    public record Dot(LocalDate on, double percent, boolean strong) {}

    /** A value with its range, from a day on. */
    public record Level(LocalDate since, double percent, double low, double high) {}

    public Deviations {
        dots = List.copyOf(dots);
    }
}
