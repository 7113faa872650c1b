package org.ohmstead.chart;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A rise over time and when it may reach a limit.
 *
 * @param days of the readings, in order
 * @param rises one per day, 0.12 is 12 %; NaN leaves a gap
 * @param limit rise at which the purpose fails
 * @param from the day from which is forecast
 * @param rise expected on that day
 * @param early the limit is reached before with a chance of one in ten; null beyond the horizon
 * @param middle with one in two
 * @param late with nine in ten
 */
public record Fan(
        List<LocalDate> days,
        double[] rises,
        double limit,
        LocalDate from,
        double rise,
        @Nullable LocalDate early,
        @Nullable LocalDate middle,
        @Nullable LocalDate late) {

    public Fan {
        days = List.copyOf(days);
        if (days.size() != rises.length) {
            throw new IllegalArgumentException("A fan has one rise per day");
        }
    }
}
