package org.ohmstead.programme;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.programme.rounds.NaivePlan;
import org.ohmstead.programme.rounds.RoundPlanner;
import org.ohmstead.programme.rounds.Stop;
import org.ohmstead.programme.rounds.Window;
import org.springframework.stereotype.Component;

/** Turns the duties of the strings in reach into a plan of visits. An area has one crew. */
@Component
class RoundPlanning {

    private final FleetRegister register;
    private final InServiceTable strings;
    private final DutyBook book;
    private final RoundTable rounds;
    private final Access access;

    RoundPlanning(FleetRegister register, InServiceTable strings, DutyBook book, RoundTable rounds, Access access) {
        this.register = register;
        this.strings = strings;
        this.book = book;
        this.rounds = rounds;
        this.access = access;
    }

    /** What a plan is made of: everything to be done, and where it belongs. */
    private record Ground(
            List<Window> windows,
            Map<String, SiteView> sites,
            Map<Long, StringView> strings,
            Map<String, String> activities) {}

    /** @param now the duties are asked as of each site's today then */
    RoundPlan plan(Instant now, LocalDate first, LocalDate last, int visitsADay, Predicate<SiteView> which) {
        Ground ground = ground(now, which);
        List<Stop> stops = RoundPlanner.plan(ground.windows(), first, last, visitsADay, rounds.visits(first));
        return new RoundPlan(
                first,
                last,
                stops.stream().map(stop -> suggested(stop, ground)).toList(),
                NaivePlan.count(ground.windows(), first, last),
                missed(stops, first));
    }

    private static long missed(List<Stop> stops, LocalDate first) {
        return stops.stream()
                .flatMap(stop -> stop.does().stream()
                        .filter(window ->
                                !window.due().isBefore(first) && window.due().isBefore(stop.on())))
                .count();
    }

    private Ground ground(Instant now, Predicate<SiteView> which) {
        Map<String, SiteView> sites =
                register.sites().stream().filter(which).collect(Collectors.toMap(SiteView::code, site -> site));
        Map<Long, StringView> serving = register.strings().stream()
                .filter(string -> string.retiredOn() == null && sites.containsKey(string.siteCode()))
                .collect(Collectors.toMap(StringView::id, string -> string));
        List<InService> inService = strings.inReach(access.reach()).stream()
                .filter(string -> serving.containsKey(string.stringId()))
                .toList();
        Map<String, NavigableSet<LocalDate>> standing = rounds.standing(earliestToday(now));
        List<Window> windows = new ArrayList<>();
        Map<String, String> activities = new HashMap<>();
        List<StringDuties> duties = book.of(inService, string -> LocalDate.ofInstant(now, string.timeZone()));
        for (int i = 0; i < inService.size(); i++) {
            InService string = inService.get(i);
            SiteView site = Objects.requireNonNull(sites.get(
                    Objects.requireNonNull(serving.get(string.stringId())).siteCode()));
            duties.get(i)
                    .duties()
                    .forEach(duty -> activities.put(
                            string.stringId() + "/" + duty.requirement().code(),
                            duty.requirement().activity()));
            windows.addAll(RoundWindows.of(site.code(), site.areaCode(), string, duties.get(i), standing));
        }
        return new Ground(windows, sites, serving, activities);
    }

    /** Nowhere on earth is it an earlier day. */
    private static LocalDate earliestToday(Instant now) {
        return LocalDate.ofInstant(now, ZoneOffset.MIN);
    }

    private static SuggestedRound suggested(Stop stop, Ground ground) {
        SiteView site = Objects.requireNonNull(ground.sites().get(stop.site()));
        return new SuggestedRound(
                site.code(),
                site.name(),
                site.areaName(),
                stop.on(),
                stop.earliest(),
                stop.latest(),
                stop.overCapacity(),
                stop.does().stream()
                        .map(window -> task(window, ground))
                        .sorted(Comparator.comparing(RoundTask::stringName).thenComparing(RoundTask::dueOn))
                        .toList());
    }

    private static RoundTask task(Window window, Ground ground) {
        String[] parts = window.key().split("/", 2);
        long stringId = Long.parseLong(parts[0]);
        String name = Objects.requireNonNull(ground.strings().get(stringId)).name();
        String activity = ground.activities().getOrDefault(window.key(), RoundTask.SURVEY_WORDS);
        return new RoundTask(stringId, name, parts[1], activity, window.due(), false);
    }
}
