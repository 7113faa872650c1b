package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Keeps each instrument's errors of the day and finds its offset since the last time that it changed. */
final class InstrumentBook {
    /** Errors that come and go with the day, besides what is known of each. */
    private static final double DAY_VARIANCE = .015 * .015;

    private static final double CHANGE_NEEDS = 10;
    private static final double NORMAL_975 = 1.959964;

    private record Day(LocalDate on, double error, double weight, int surveys) {}

    private final Map<String, List<Day>> days = new LinkedHashMap<>();

    void note(String instrument, LocalDate on, SharedError error, int surveys) {
        if (error.known()) {
            double weight = 1 / (error.variance() + DAY_VARIANCE);
            days.computeIfAbsent(instrument, key -> new ArrayList<>()).add(new Day(on, error.mean(), weight, surveys));
        }
    }

    List<InstrumentOffset> offsets() {
        return days.entrySet().stream()
                .map(entry -> offset(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static InstrumentOffset offset(String instrument, List<Day> all) {
        List<Day> since = all.subList(lastChange(all), all.size());
        double mean = mean(since);
        double reach = NORMAL_975 / Math.sqrt(weight(since));
        return new InstrumentOffset(
                instrument,
                Math.expm1(mean),
                Math.expm1(mean - reach),
                Math.expm1(mean + reach),
                since.get(0).on(),
                since.size(),
                since.stream().mapToInt(Day::surveys).sum());
    }

    /** The split that parts the days best into two levels, if it does so clearly; else the first day. */
    private static int lastChange(List<Day> all) {
        double whole = scatter(all);
        double best = whole - CHANGE_NEEDS;
        int at = 0;
        for (int split = 2; split <= all.size() - 2; split++) {
            double parted = scatter(all.subList(0, split)) + scatter(all.subList(split, all.size()));
            if (parted < best) {
                best = parted;
                at = split;
            }
        }
        return at;
    }

    private static double scatter(List<Day> some) {
        double mean = mean(some);
        return some.stream()
                .mapToDouble(day -> day.weight() * (day.error() - mean) * (day.error() - mean))
                .sum();
    }

    private static double mean(List<Day> some) {
        return some.stream().mapToDouble(day -> day.weight() * day.error()).sum() / weight(some);
    }

    private static double weight(List<Day> some) {
        return some.stream().mapToDouble(Day::weight).sum();
    }
}
