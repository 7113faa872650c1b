package org.ohmstead.programme.rounds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What is still to be done at one site, as the plan goes on. */
final class SiteQueue {

    private final String site;
    private final String crew;
    private final LocalDate last;
    private LocalDate free;
    private List<Window> pending;

    /** @param first and {@code last} day of the plan */
    SiteQueue(List<Window> windows, LocalDate first, LocalDate last) {
        this.site = windows.get(0).site();
        this.crew = windows.get(0).crew();
        this.free = first;
        this.last = last;
        this.pending = windows;
    }

    /** The next visit, as late as it can be; none when nothing more falls due. */
    Optional<Stop> next() {
        Optional<Window> first = pending.stream()
                .filter(window -> !window.due().isAfter(last))
                .min(Comparator.comparing(this::mustBe).thenComparing(Window::key));
        return first.map(window -> {
            LocalDate latest = mustBe(window);
            return new Stop(site, crew, latest, earliest(latest), latest, open(latest), false);
        });
    }

    /** The latest day for it: a workday in time, or as soon as possible when it is overdue. */
    private LocalDate mustBe(Window window) {
        if (window.due().isBefore(free)) {
            return Workdays.onOrAfter(free);
        }
        LocalDate from = window.opens().isAfter(free) ? window.opens() : free;
        return Workdays.latestBetween(from, window.due());
    }

    /** From which on the same visit does all that it must do within the plan. */
    private LocalDate earliest(LocalDate latest) {
        return open(latest).stream()
                .filter(window -> !window.due().isAfter(last))
                .map(Window::opens)
                .filter(opens -> opens.isAfter(free))
                .max(Comparator.naturalOrder())
                .orElse(free);
    }

    private List<Window> open(LocalDate day) {
        return pending.stream().filter(window -> window.isOpen(day)).toList();
    }

    /** The visit as it was fixed: does what is open on that day, and opens what comes after. */
    Stop make(Stop planned, LocalDate on, boolean overCapacity) {
        List<Window> done = open(on);
        List<Window> left = new ArrayList<>();
        for (Window window : pending) {
            Window after = done.contains(window) ? window.after(on) : window;
            if (after != null) {
                left.add(after);
            }
        }
        pending = left;
        free = on.plusDays(1);
        return new Stop(site, crew, on, planned.earliest(), planned.latest(), done, overCapacity);
    }
}
