package org.ohmstead.programme.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.ohmstead.programme.rules.Counting;
import org.ohmstead.programme.rules.Interval;

/** Seeded random estates; the fewest visits are found by trying every set of days on small ones. */
class RoundPlannerTest {

    /** A Monday. */
    private static final LocalDate FIRST = LocalDate.parse("2026-04-06");

    private static final LocalDate LAST = FIRST.plusDays(90);
    private static final int ANY = Integer.MAX_VALUE;

    private static LocalDate day(int offset) {
        return FIRST.plusDays(offset);
    }

    private static Window window(String site, String key, int opens, int due) {
        return Window.once(site, "crew", key, day(opens), day(due));
    }

    @Test
    void oneVisitDoesAllThatIsOpen() {
        List<Stop> stops = RoundPlanner.plan(
                List.of(window("A", "grounds", 0, 25), window("A", "level", 3, 24), window("A", "rack", 10, 300)),
                FIRST,
                LAST,
                1);
        assertThat(stops).singleElement().satisfies(stop -> {
            assertThat(stop.on()).isEqualTo(day(24));
            assertThat(stop.earliest()).isEqualTo(day(3));
            assertThat(stop.does()).hasSize(3);
        });
    }

    @Test
    void whatFallsDueAtAWeekendIsDoneOnTheFridayBefore() {
        // day 26 is a Saturday
        assertThat(plan(window("A", "grounds", 0, 26))).containsExactly(day(25));
        assertThat(plan(window("A", "grounds", 26, 27)))
                .as("unless the weekend is all there is")
                .containsExactly(day(27));
    }

    @Test
    void whatIsOverdueIsDoneAtOnce() {
        assertThat(plan(window("A", "grounds", -90, -20), window("A", "rack", 30, 60)))
                .containsExactly(day(0), day(60));
    }

    @Test
    void aCrewsVisitsAreSpreadBackOverItsDays() {
        List<Window> monthEnd = new ArrayList<>();
        for (int site = 0; site < 9; site++) {
            monthEnd.add(window("S" + site, "grounds", 0, 24));
        }
        List<Stop> stops = RoundPlanner.plan(monthEnd, FIRST, LAST, 2);
        assertThat(perDay(stops).values()).allMatch(visits -> visits <= 2);
        assertThat(stops).extracting(Stop::on).allMatch(Workdays::isWorkday).allMatch(on -> on.isAfter(day(16)));
    }

    @Test
    void aVisitWithoutAFreePlaceIsMadeInTimeAllTheSameAndSaysSo() {
        List<Stop> stops = RoundPlanner.plan(
                List.of(window("A", "x", 2, 2), window("B", "x", 2, 2), window("C", "x", 0, 2)), FIRST, LAST, 1);
        assertThat(stops).extracting(Stop::overCapacity).containsExactlyInAnyOrder(false, false, true);
        assertThat(stops).extracting(Stop::on).containsExactly(day(1), day(2), day(2));
    }

    @Test
    void whatACrewHasPlannedAlreadyTakesItsPlaces() {
        List<Window> two = List.of(window("A", "x", 0, 2), window("B", "x", 0, 2));
        assertThat(RoundPlanner.plan(two, FIRST, LAST, 2, Map.of("crew", Map.of(day(2), 1))))
                .extracting(Stop::on)
                .containsExactly(day(1), day(2));
        assertThat(RoundPlanner.plan(two, FIRST, LAST, 2, Map.of("another crew", Map.of(day(2), 1))))
                .extracting(Stop::on)
                .containsExactly(day(2), day(2));
    }

    private static List<LocalDate> plan(Window... windows) {
        return RoundPlanner.plan(List.of(windows), FIRST, LAST, ANY).stream()
                .map(Stop::on)
                .toList();
    }

    private static Map<LocalDate, Integer> perDay(List<Stop> stops) {
        Map<LocalDate, Integer> perDay = new HashMap<>();
        stops.forEach(stop -> perDay.merge(stop.on(), 1, Integer::sum));
        return perDay;
    }

    @Test
    void noOtherPlanMakesFewerVisits() {
        Random random = new Random(41);
        int horizon = 11;
        for (int round = 0; round < 400; round++) {
            List<Window> windows = new ArrayList<>();
            for (int i = 0; i <= random.nextInt(6); i++) {
                int opens = random.nextInt(horizon);
                int due = opens + random.nextInt(horizon - opens);
                Window window = Window.once("A", "crew", "w" + i, day(opens), day(due));
                if (!Workdays.onOrAfter(window.opens()).isAfter(window.due())) {
                    windows.add(window);
                }
            }
            List<Stop> stops = RoundPlanner.plan(windows, FIRST, day(horizon), ANY);
            assertThat(stops).as(windows.toString()).hasSize(fewest(windows, horizon));
            assertThat(missed(windows, stops)).isZero();
        }
    }

    /** By trying every set of workdays. */
    private static int fewest(List<Window> windows, int horizon) {
        int fewest = horizon;
        for (int set = 0; set < 1 << horizon; set++) {
            int days = set;
            boolean all = windows.stream().allMatch(window -> isStabbed(window, days, horizon));
            fewest = all ? Math.min(fewest, Integer.bitCount(set)) : fewest;
        }
        return fewest;
    }

    private static boolean isStabbed(Window window, int days, int horizon) {
        for (int day = 0; day < horizon; day++) {
            boolean inside = !day(day).isBefore(window.opens()) && !day(day).isAfter(window.due());
            if ((days >> day & 1) == 1 && inside && Workdays.isWorkday(day(day))) {
                return true;
            }
        }
        return false;
    }

    private static long missed(List<Window> windows, List<Stop> stops) {
        return windows.stream()
                .filter(window -> !window.due().isBefore(FIRST) && !window.due().isAfter(LAST))
                .filter(window -> stops.stream()
                        .noneMatch(stop ->
                                stop.does().contains(window) && !stop.on().isAfter(window.due())))
                .count();
    }

    /** Duties that repeat, as the rules count them, at sites of several crews. */
    private static List<Window> estate(Random random, int sites, boolean withOpenings) {
        List<Window> windows = new ArrayList<>();
        for (int site = 0; site < sites; site++) {
            for (int i = 0; i <= random.nextInt(8); i++) {
                Interval interval = Interval.ofMonths(
                        List.of(1, 3, 4, 6, 18).get(random.nextInt(5)),
                        random.nextInt(4) == 0 ? Counting.TO_THE_DAY : Counting.END_OF_MONTH);
                LocalDate done = FIRST.minusDays(random.nextInt(31 * interval.months()));
                windows.add(repeating("S" + site, "crew " + site % 3, "d" + i, interval, done, withOpenings));
            }
        }
        return windows;
    }

    private static Window repeating(
            String site, String crew, String key, Interval interval, LocalDate done, boolean withOpenings) {
        LocalDate due = interval.dueAfter(done);
        LocalDate opens = withOpenings ? done.plusDays(15L * interval.months()) : done.plusDays(1);
        return new Window(site, crew, key, opens, due, on -> repeating(site, crew, key, interval, on, withOpenings));
    }

    @Test
    void onRandomEstatesNothingIsMissedAndNoVisitIsAddedToTheNaivePlan() {
        Random random = new Random(43);
        for (int round = 0; round < 150; round++) {
            List<Window> windows = estate(random, 1 + random.nextInt(25), random.nextBoolean());
            List<Stop> stops = RoundPlanner.plan(windows, FIRST, LAST, ANY);
            assertThat(missed(windows, stops)).isZero();
            assertThat(late(stops)).isZero();
            assertThat(stops.size()).isLessThanOrEqualTo(NaivePlan.count(windows, FIRST, LAST));
        }
    }

    @Test
    void withFewPlacesNothingIsMissedEither() {
        Random random = new Random(47);
        for (int round = 0; round < 150; round++) {
            List<Window> windows = estate(random, 1 + random.nextInt(40), random.nextBoolean());
            int places = 1 + random.nextInt(3);
            List<Stop> stops = RoundPlanner.plan(windows, FIRST, LAST, places);
            assertThat(missed(windows, stops)).isZero();
            assertThat(late(stops)).isZero();
            Map<String, Integer> perDay = new HashMap<>();
            stops.stream()
                    .filter(stop -> !stop.overCapacity())
                    .forEach(stop -> perDay.merge(stop.crew() + stop.on(), 1, Integer::sum));
            assertThat(perDay.values()).allMatch(visits -> visits <= places);
        }
    }

    /** Repeats included: whatever a visit does is not overdue then, unless it was before the plan began. */
    private static long late(List<Stop> stops) {
        return stops.stream()
                .flatMap(stop -> stop.does().stream()
                        .filter(window ->
                                !window.due().isBefore(FIRST) && window.due().isBefore(stop.on())))
                .count();
    }

    @Test
    void whereDutiesAreAlwaysOpenNoRandomPlanNeedsFewerVisits() {
        Random random = new Random(53);
        for (int round = 0; round < 60; round++) {
            List<Window> windows = estate(random, 1, false);
            int planned = RoundPlanner.plan(windows, FIRST, LAST, ANY).size();
            for (int other = 0; other < 20; other++) {
                assertThat(planned).isLessThanOrEqualTo(randomPlan(windows, random));
            }
        }
    }

    /** Goes some days earlier than need be each time and does all. */
    private static int randomPlan(List<Window> windows, Random random) {
        List<Window> pending = windows;
        LocalDate free = FIRST;
        int visits = 0;
        while (true) {
            LocalDate from = free;
            LocalDate due = pending.stream()
                    .map(Window::due)
                    .filter(day -> !day.isAfter(LAST))
                    .min(LocalDate::compareTo)
                    .orElse(null);
            if (due == null) {
                return visits;
            }
            LocalDate latest =
                    Workdays.onOrBefore(due).isBefore(from) ? Workdays.onOrAfter(from) : Workdays.onOrBefore(due);
            LocalDate earlier = latest.minusDays(random.nextInt(12));
            LocalDate on = earlier.isBefore(from) ? latest : earlier;
            pending = pending.stream().map(window -> window.after(on)).toList();
            free = on.plusDays(1);
            visits++;
        }
    }
}
