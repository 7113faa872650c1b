package org.ohmstead.programme.rounds;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What the planner is measured against: everything is done by itself on its own last workday in time. What falls on one
 * day at one site is one visit.
 */
public final class NaivePlan {

    private NaivePlan() {}

    /** The days of the visits by site. */
    public static Map<String, TreeSet<LocalDate>> visits(List<Window> windows, LocalDate first, LocalDate last) {
        PriorityQueue<Window> queue = new PriorityQueue<>(java.util.Comparator.comparing(Window::due));
        queue.addAll(windows);
        Map<String, TreeSet<LocalDate>> days = new TreeMap<>();
        while (!queue.isEmpty()) {
            Window window = queue.remove();
            if (!window.due().isAfter(last)) {
                LocalDate on = day(window, first);
                days.computeIfAbsent(window.site(), site -> new TreeSet<>()).add(on);
                Window after = window.after(on);
                if (after != null) {
                    queue.add(after);
                }
            }
        }
        return days;
    }

    public static int count(List<Window> windows, LocalDate first, LocalDate last) {
        return visits(windows, first, last).values().stream()
                .mapToInt(TreeSet::size)
                .sum();
    }

    private static LocalDate day(Window window, LocalDate first) {
        if (window.due().isBefore(first)) {
            return Workdays.onOrAfter(first);
        }
        LocalDate from = window.opens().isAfter(first) ? window.opens() : first;
        return Workdays.latestBetween(from, window.due());
    }
}
