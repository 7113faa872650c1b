package org.ohmstead.assessment.model.estate;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.statistics.PoissonBinomial;

/** Adds up jar by jar what is to be replaced when. Holds sums, never the jars. */
public final class ReplacementTally {

    /** A jar that is past its limit more likely than not counts as due already. */
    private static final double MORE_LIKELY_THAN_NOT = 0.5;

    private static final double DAYS_PER_YEAR = 365.25;

    private final LocalDate today;
    private final List<CalendarQuarter> quarters;
    private final Map<Group, Sums> groups = new HashMap<>();

    private record Group(@Nullable String area, @Nullable String jarType) {}

    public ReplacementTally(LocalDate today, int quarters) {
        this.today = today;
        this.quarters = CalendarQuarter.startingWith(today, quarters);
        sums(new Group(null, null));
    }

    /** A jar of which nothing is forecast counts by the life curve of its type alone. */
    public void add(
            String area, String jarType, LocalDate since, @Nullable JarChances chances, @Nullable LifeLine life) {
        double @Nullable [] shares = shares(since, chances, life);
        for (Group group : List.of(
                new Group(null, null), new Group(area, null), new Group(null, jarType), new Group(area, jarType))) {
            sums(group).add(shares);
        }
    }

    private Sums sums(Group group) {
        return groups.computeIfAbsent(group, key -> new Sums(quarters.size()));
    }

    /** Chance of being due already, then of each quarter; null when nothing can be said. */
    private double @Nullable [] shares(LocalDate since, @Nullable JarChances chances, @Nullable LifeLine life) {
        if (chances == null && life == null) {
            return null;
        }
        double[] past = new double[quarters.size() + 1];
        past[0] = past(today, since, chances, life);
        for (int q = 0; q < quarters.size(); q++) {
            past[q + 1] = past(quarters.get(q).until(), since, chances, life);
        }
        return parted(past);
    }

    private double past(LocalDate day, LocalDate since, @Nullable JarChances chances, @Nullable LifeLine life) {
        if (chances != null) {
            return new JarFuture(chances, since, life).past(day);
        }
        return life == null ? 0 : life.failsBetween(age(since, today), age(since, day));
    }

    private static double age(LocalDate since, LocalDate day) {
        return Math.max(0, ChronoUnit.DAYS.between(since, day) / DAYS_PER_YEAR);
    }

    private static double[] parted(double[] past) {
        boolean already = past[0] >= MORE_LIKELY_THAN_NOT;
        double serving = already ? 1 : 1 - past[0];
        double[] shares = new double[past.length];
        shares[0] = already ? past[0] : 0;
        for (int q = 1; q < past.length; q++) {
            shares[q] = Math.max(0, past[q] - past[q - 1]) / serving;
        }
        return shares;
    }

    public ReplacementForecast forecast() {
        return new ReplacementForecast(
                today,
                quarters,
                lines(group -> group.area() == null && group.jarType() == null).get(0),
                lines(group -> group.area() == null && group.jarType() != null),
                lines(group -> group.area() != null && group.jarType() == null),
                lines(group -> group.area() != null && group.jarType() != null));
    }

    private List<ForecastLine> lines(Predicate<Group> which) {
        Comparator<Group> byArea = Comparator.comparing(group -> String.valueOf(group.area()));
        return groups.entrySet().stream()
                .filter(entry -> which.test(entry.getKey()))
                .sorted(Map.Entry.comparingByKey(byArea.thenComparing(group -> String.valueOf(group.jarType()))))
                .map(entry -> entry.getValue().line(entry.getKey()))
                .toList();
    }

    private static final class Sums {

        private final PoissonBinomial[] parts;
        private final PoissonBinomial inAll = new PoissonBinomial();
        private int jars;
        private int unforeseen;

        Sums(int quarters) {
            parts = new PoissonBinomial[quarters + 1];
            Arrays.setAll(parts, q -> new PoissonBinomial());
        }

        void add(double @Nullable [] shares) {
            jars++;
            if (shares == null) {
                unforeseen++;
                return;
            }
            for (int q = 0; q < parts.length; q++) {
                parts[q].add(shares[q]);
            }
            inAll.add(Arrays.stream(shares).sum());
        }

        ForecastLine line(Group group) {
            return new ForecastLine(
                    group.area(),
                    group.jarType(),
                    jars,
                    unforeseen,
                    Expected.of(parts[0]),
                    Arrays.stream(parts).skip(1).map(Expected::of).toList(),
                    Expected.of(inAll));
        }
    }
}
