package org.ohmstead.programme.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.ohmstead.programme.rules.Counting;
import org.ohmstead.programme.rules.Interval;

/** Plans beside rounds that stand already, on seeded random estates whose duties come back several times within a plan. */
class StandingTest {

    /** A Monday. */
    private static final LocalDate FIRST = LocalDate.parse("2026-04-06");

    private static final LocalDate LAST = FIRST.plusDays(360);

    private static final int ANY = Integer.MAX_VALUE;

    private static Window duty(String site, String key, Interval interval, LocalDate done) {
        LocalDate due = interval.dueAfter(done);
        LocalDate opens = done.plusDays(15L * interval.months());
        return new Window(site, "crew", key, opens, due, on -> duty(site, key, interval, on));
    }

    private static List<Window> estate(Random random) {
        List<Window> windows = new ArrayList<>();
        for (int site = 0; site <= random.nextInt(12); site++) {
            for (int i = 0; i <= random.nextInt(6); i++) {
                Interval interval = Interval.ofMonths(
                        List.of(1, 3, 4, 6, 12).get(random.nextInt(5)),
                        random.nextBoolean() ? Counting.TO_THE_DAY : Counting.END_OF_MONTH);
                LocalDate done = FIRST.minusDays(random.nextInt(31 * interval.months()));
                windows.add(duty("S" + site, site + "/" + i, interval, done));
            }
        }
        return windows;
    }

    private static Map<String, NavigableSet<LocalDate>> days(List<Stop> stops) {
        Map<String, NavigableSet<LocalDate>> days = new HashMap<>();
        stops.forEach(stop -> stop.does()
                .forEach(window -> days.computeIfAbsent(window.key(), key -> new TreeSet<>())
                        .add(stop.on())));
        return days;
    }

    private static List<Window> beside(List<Window> windows, Map<String, NavigableSet<LocalDate>> standing) {
        return windows.stream()
                .map(window -> Standing.of(standing.getOrDefault(window.key(), new TreeSet<>()), FIRST)
                        .left(window, FIRST))
                .filter(Objects::nonNull)
                .toList();
    }

    private static List<Stop> plan(List<Window> windows) {
        return RoundPlanner.plan(windows, FIRST, LAST, ANY);
    }

    @Test
    void aPlanTakenOverWholeLeavesNothingToPropose() {
        Random random = new Random(61);
        for (int round = 0; round < 150; round++) {
            List<Window> windows = estate(random);
            List<Stop> stops = plan(windows);
            assertThat(plan(beside(windows, days(stops)))).isEmpty();
        }
    }

    /** Whichever of the proposed visits were taken over: together with what is proposed beside them nothing is missed. */
    @Test
    void besideAnyStandingRoundsNothingIsMissedAndNothingIsProposedTwice() {
        Random random = new Random(67);
        int proposedBeside = 0;
        for (int round = 0; round < 150; round++) {
            List<Window> windows = estate(random);
            List<Stop> all = plan(windows);
            List<Stop> kept = all.stream().filter(stop -> random.nextInt(3) > 0).toList();
            Map<String, NavigableSet<LocalDate>> standing = days(kept);
            List<Stop> more = plan(beside(windows, standing));
            Map<String, NavigableSet<LocalDate>> proposed = days(more);
            windows.forEach(window -> replay(window, standing, proposed));
            assertThat(kept.size() + more.size())
                    .as("visits")
                    .isLessThanOrEqualTo(kept.size() + NaivePlan.count(beside(windows, standing), FIRST, LAST));
            proposedBeside += more.size();
        }
        assertThat(proposedBeside).as("visits proposed beside standing ones").isPositive();
    }

    /** Does the duty on each of its days in turn. */
    private static void replay(
            Window duty, Map<String, NavigableSet<LocalDate>> standing, Map<String, NavigableSet<LocalDate>> proposed) {
        NavigableSet<LocalDate> stands = standing.getOrDefault(duty.key(), new TreeSet<>());
        Map<LocalDate, Boolean> days = new TreeMap<>();
        stands.forEach(day -> days.put(day, false));
        proposed.getOrDefault(duty.key(), new TreeSet<>()).forEach(day -> days.put(day, true));
        Window window = duty;
        for (Map.Entry<LocalDate, Boolean> day : days.entrySet()) {
            LocalDate due = window.due();
            boolean overdue = due.isBefore(FIRST);
            assertThat(overdue || !day.getKey().isAfter(due))
                    .as(duty.key() + " in time")
                    .isTrue();
            if (day.getValue()) {
                LocalDate next = stands.ceiling(day.getKey());
                assertThat(next == null || !overdue && next.isAfter(due))
                        .as(duty.key() + " proposed for " + day.getKey() + ", but a round on " + next
                                + " does it before " + due)
                        .isTrue();
            }
            window = Objects.requireNonNull(window.after(day.getKey()));
        }
        assertThat(window.due()).as(duty.key() + " after its last visit").isAfter(LAST);
    }

    @Test
    void aStandingDayAfterTheDueDayHelpsNothing() {
        Window window = duty("A", "0/0", Interval.ofMonths(4, Counting.END_OF_MONTH), LocalDate.parse("2026-01-12"));
        assertThat(window.due()).isEqualTo("2026-05-31");
        NavigableSet<LocalDate> tooLate = new TreeSet<>(List.of(LocalDate.parse("2026-06-02")));
        assertThat(plan(beside(List.of(window), Map.of("0/0", tooLate))).get(0).on())
                .isEqualTo("2026-05-29");
        NavigableSet<LocalDate> inTime = new TreeSet<>(List.of(LocalDate.parse("2026-05-31")));
        assertThat(plan(beside(List.of(window), Map.of("0/0", inTime))).get(0).on())
                .isEqualTo("2026-09-30");
    }

    @Test
    void whatIsLateAnywayIsLeftToTheRoundThatStands() {
        Window overdue = duty("A", "0/0", Interval.ofMonths(4, Counting.END_OF_MONTH), LocalDate.parse("2025-10-12"));
        NavigableSet<LocalDate> planned = new TreeSet<>(List.of(LocalDate.parse("2026-04-20")));
        assertThat(plan(beside(List.of(overdue), Map.of("0/0", planned))).get(0).on())
                .isEqualTo("2026-08-31");
        NavigableSet<LocalDate> passed = new TreeSet<>(List.of(FIRST.minusDays(1)));
        assertThat(plan(beside(List.of(overdue), Map.of("0/0", passed))).get(0).on())
                .isEqualTo(FIRST);
    }
}
