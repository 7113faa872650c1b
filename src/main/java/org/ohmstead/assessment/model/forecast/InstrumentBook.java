package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Keeps each instrument's errors of the day. It follows an instrument's offset from day to day for the next survey that it
 * reads, and finds its offset since the last time that it changed for people to look at.
 */
final class InstrumentBook {
    /** Errors that come and go with the day, besides what is known of each. */
    private static final double DAY_VARIANCE = .015 * .015;

    /** How far the expectations for an estate's strings may err together for years; no number of days averages it out. */
    private static final double LASTING_VARIANCE = .02 * .02;

    /** The longer an instrument is used, the more of its offset the strings' own levels have taken up. */
    private static final double TAKEN_UP_PER_YEAR = .04 * .04;

    private static final double CHANGE_NEEDS = 10;
    private static final double DAYS_PER_YEAR = 365.25;
    private static final double NORMAL_975 = 1.959964;

    private record Day(LocalDate on, double error, double weight, int surveys) {}

    /** The offset as it was last known. */
    private record Track(double mean, double variance, LocalDate on) {}

    private final Map<String, List<Day>> days = new LinkedHashMap<>();
    private final Map<String, Track> tracks = new HashMap<>();
    private final ForecastParameters parameters;

    InstrumentBook(ForecastParameters parameters) {
        this.parameters = parameters;
    }

    /** What earlier days tell of its error on a day; known when there were any. */
    SharedError expected(@Nullable String instrument, LocalDate on) {
        Track track = instrument == null ? null : tracks.get(instrument);
        double ofDay = square(parameters.instrumentDayDeviation());
        if (track == null) {
            return new SharedError(0, ofDay + square(parameters.instrumentSpread()), false);
        }
        double years = ChronoUnit.DAYS.between(track.on(), on) / DAYS_PER_YEAR;
        double drifted = track.variance() + square(parameters.instrumentDrift()) * years;
        return new SharedError(track.mean(), ofDay + drifted, true);
    }

    /** @param error what all its surveys of that day say */
    void note(String instrument, LocalDate on, SharedError error, int surveys) {
        if (error.known()) {
            List<Day> sofar = days.computeIfAbsent(instrument, key -> new ArrayList<>());
            double years =
                    sofar.isEmpty() ? 0 : ChronoUnit.DAYS.between(sofar.get(0).on(), on) / DAYS_PER_YEAR;
            double weight = 1 / (error.variance() + DAY_VARIANCE + TAKEN_UP_PER_YEAR * years);
            sofar.add(new Day(on, error.mean(), weight, surveys));
            follow(instrument, on, error);
        }
    }

    private void follow(String instrument, LocalDate on, SharedError error) {
        SharedError before = expected(instrument, on);
        double ofDay = square(parameters.instrumentDayDeviation());
        double ofOffset = before.variance() - ofDay;
        double gain = ofOffset / (before.variance() + error.variance());
        double left = Math.max(square(parameters.instrumentLeastDeviation()), ofOffset * (1 - gain));
        tracks.put(instrument, new Track(before.mean() + gain * (error.mean() - before.mean()), left, on));
    }

    private static double square(double x) {
        return x * x;
    }

    List<InstrumentOffset> offsets() {
        return days.entrySet().stream()
                .map(entry -> offset(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static InstrumentOffset offset(String instrument, List<Day> all) {
        List<Day> since = all.subList(lastChange(all), all.size());
        double mean = mean(since);
        double reach = NORMAL_975 * Math.sqrt(1 / weight(since) + LASTING_VARIANCE);
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
