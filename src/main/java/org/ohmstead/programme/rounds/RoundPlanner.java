package org.ohmstead.programme.rounds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Plans the visits of some weeks. Nothing that falls due in them is missed.
 *
 * <p>At each site the next visit is made on the last workday on which nothing is late yet, and does all that is open by
 * then. For windows that do not repeat this is the classic way to stab intervals with the fewest points: some visit must
 * fall into the window that ends first, and none does more than one at its end. It stays the fewest when windows repeat
 * but are open from the start and a later completion never brings an earlier due day: visit for visit no other plan can
 * be later. With both, repeats and opening days, it is a good plan without that proof.
 *
 * <p>Then the first visits of all sites are laid on the crews' days, after that the second ones, and so on. Going back
 * from the last day, a crew's free places of each day go to those of the visits that may still be made then that can wait
 * longest for their opening day; this finds days for all of them whenever there are days for all. A visit for which no
 * place is left stays on its last day and says so: a duty is never late for want of a place. A visit moved forward may
 * bring its site's next one forward too.
 */
public final class RoundPlanner {

    private final LocalDate first;
    private final LocalDate last;
    private final int visitsPerCrewAndDay;
    private final Map<String, Map<LocalDate, Integer>> taken = new HashMap<>();

    private RoundPlanner(
            LocalDate first, LocalDate last, int visitsPerCrewAndDay, Map<String, Map<LocalDate, Integer>> standing) {
        this.first = first;
        this.last = last;
        this.visitsPerCrewAndDay = visitsPerCrewAndDay;
        standing.forEach((crew, days) -> taken.put(crew, new HashMap<>(days)));
    }

    /**
     * @param first day of the plan; what is overdue by then is done as soon as possible
     * @param last what is due later is done along with other things but causes no visit
     * @param visitsPerCrewAndDay sites that one crew can visit on one day, 1 or more
     * @param standing how many visits each crew has on which day already
     * @return by day, then site
     */
    public static List<Stop> plan(
            List<Window> windows,
            LocalDate first,
            LocalDate last,
            int visitsPerCrewAndDay,
            Map<String, Map<LocalDate, Integer>> standing) {
        if (visitsPerCrewAndDay < 1) {
            throw new IllegalArgumentException("A crew makes at least one visit a day, not " + visitsPerCrewAndDay);
        }
        return new RoundPlanner(first, last, visitsPerCrewAndDay, standing).plan(windows);
    }

    /** The same for crews that have nothing to do yet. */
    public static List<Stop> plan(List<Window> windows, LocalDate first, LocalDate last, int visitsPerCrewAndDay) {
        return plan(windows, first, last, visitsPerCrewAndDay, Map.of());
    }

    private List<Stop> plan(List<Window> windows) {
        Map<String, List<Window>> bySite =
                windows.stream().collect(Collectors.groupingBy(Window::site, TreeMap::new, Collectors.toList()));
        List<SiteQueue> queues = bySite.values().stream()
                .map(site -> new SiteQueue(site, first, last))
                .toList();
        List<Stop> stops = new ArrayList<>();
        List<Stop> wave = fixNext(queues);
        while (!wave.isEmpty()) {
            stops.addAll(wave);
            wave = fixNext(queues);
        }
        stops.sort(Comparator.comparing(Stop::on).thenComparing(Stop::crew).thenComparing(Stop::site));
        return stops;
    }

    private record Wish(SiteQueue queue, Stop stop) {}

    /** Fixes the next visit of every site that needs one. */
    private List<Stop> fixNext(List<SiteQueue> queues) {
        List<Wish> wishes = new ArrayList<>();
        for (SiteQueue queue : queues) {
            queue.next().ifPresent(stop -> wishes.add(new Wish(queue, stop)));
        }
        List<Stop> fixed = new ArrayList<>();
        wishes.stream()
                .collect(Collectors.groupingBy(wish -> wish.stop().crew(), TreeMap::new, Collectors.toList()))
                .values()
                .forEach(crew -> fixed.addAll(level(crew)));
        return fixed;
    }

    private List<Stop> level(List<Wish> wishes) {
        List<Wish> open = new ArrayList<>(wishes);
        List<Stop> fixed = new ArrayList<>();
        LocalDate day = wishes.stream()
                .map(wish -> wish.stop().latest())
                .max(Comparator.naturalOrder())
                .orElse(first);
        for (; !day.isBefore(first); day = day.minusDays(1)) {
            LocalDate on = day;
            Optional<Wish> next = mostPressing(open, on);
            while (next.isPresent() && hasPlace(next.get(), on)) {
                open.remove(next.get());
                fixed.add(fix(next.get(), on, false));
                next = mostPressing(open, on);
            }
        }
        open.forEach(left -> fixed.add(fix(left, left.stop().latest(), true)));
        return fixed;
    }

    private static Optional<Wish> mostPressing(List<Wish> open, LocalDate day) {
        return open.stream()
                .filter(wish -> !day.isAfter(wish.stop().latest())
                        && !day.isBefore(wish.stop().earliest()))
                .max(Comparator.comparing((Wish wish) -> wish.stop().earliest())
                        .thenComparing(wish -> wish.stop().latest())
                        .thenComparing(wish -> wish.stop().site()));
    }

    /** On a day that is no workday only what has no other. */
    private boolean hasPlace(Wish wish, LocalDate day) {
        boolean possible = Workdays.isWorkday(day) || day.equals(wish.stop().latest());
        return possible && places(wish.stop().crew(), day) < visitsPerCrewAndDay;
    }

    private int places(String crew, LocalDate day) {
        return taken.getOrDefault(crew, Map.of()).getOrDefault(day, 0);
    }

    private Stop fix(Wish wish, LocalDate on, boolean overCapacity) {
        taken.computeIfAbsent(wish.stop().crew(), crew -> new HashMap<>()).merge(on, 1, Integer::sum);
        return wish.queue().make(wish.stop(), on, overCapacity);
    }
}
