package org.ohmstead.overview;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.RunView;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.StringView;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The estate and its sites at a glance, within the reader's reach. */
@Service
@Transactional(readOnly = true)
public class EstateOverview {

    private static final int FIRST = 7;
    private static final int HELD_SHOWN = 5;
    private static final int MOST_FOUND = 50;

    private final FleetRegister register;
    private final Assessments assessments;
    private final Tiles tiles;
    private final Visits visits;
    private final HeldAtTheDoor held;
    private final Access access;
    private final Clock clock;

    EstateOverview(
            FleetRegister register,
            Assessments assessments,
            Tiles tiles,
            Visits visits,
            HeldAtTheDoor held,
            Access access,
            Clock clock) {
        this.register = register;
        this.assessments = assessments;
        this.tiles = tiles;
        this.visits = visits;
        this.held = held;
        this.access = access;
        this.clock = clock;
    }

    public EstateView estate(EstateFilter filter) {
        access.require(Permission.SEE_ESTATE);
        List<SiteView> sites = register.sites();
        List<StringView> strings = register.strings();
        List<StringTile> all = tiles.of(strings, sites);
        return new EstateView(
                EstateSentence.of(all, today(sites)),
                counts(all, strings, sites),
                wall(all.stream().filter(filter::shows).toList(), sites),
                FirstInLine.of(all, FIRST),
                held.latest(HELD_SHOWN),
                visits.lastWeek(),
                choices(all),
                assessments.lastRun().map(EstateOverview::when).orElse(null));
    }

    /** Every string that needs someone, first in line first. */
    public List<StringTile> line() {
        access.require(Permission.SEE_ESTATE);
        return FirstInLine.of(tiles.of(register.strings(), register.sites()), Integer.MAX_VALUE);
    }

    /** @param words all of which must stand in a site's code or name, or in a string's site and name; in any case */
    public Found find(String words) {
        access.require(Permission.SEE_ESTATE);
        List<String> wanted = List.of(words.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        if (words.isBlank()) {
            return new Found(words, List.of(), List.of());
        }
        List<SiteView> sites = register.sites();
        List<Found.Site> found = sites.stream()
                .filter(site -> holds(site.code() + " " + site.name(), wanted))
                .limit(MOST_FOUND)
                .map(site -> new Found.Site(site.code(), site.name(), site.areaName()))
                .toList();
        List<StringTile> strings = tiles.of(register.strings(), sites).stream()
                .filter(tile -> holds(tile.siteCode() + " " + tile.siteName() + " " + tile.name(), wanted))
                .limit(MOST_FOUND)
                .toList();
        return new Found(words, found, strings);
    }

    private static boolean holds(String text, List<String> wanted) {
        String lower = text.toLowerCase(Locale.ROOT);
        return wanted.stream().allMatch(lower::contains);
    }

    public SitePage site(String code) {
        access.require(Permission.SEE_ESTATE);
        SiteView site = register.site(code);
        List<StringTile> strings = tiles.of(register.stringsOf(code), List.of(site));
        return new SitePage(
                site.code(),
                site.name(),
                site.areaName(),
                site.timeZone(),
                site.entry().loadKind(),
                site.entry().accessNotes(),
                site.entry().contacts(),
                SiteSentence.of(site.name(), strings),
                strings,
                visits.at(site.id()),
                held.of(strings));
    }

    private static @Nullable Instant when(RunView run) {
        return run.finishedAt();
    }

    private static EstateView.Counts counts(List<StringTile> all, List<StringView> strings, List<SiteView> sites) {
        long jars = strings.stream()
                .filter(string -> string.retiredOn() == null)
                .mapToLong(StringView::positions)
                .sum();
        long areas = sites.stream().map(SiteView::areaId).distinct().count();
        return EstateCounts.of(all, (int) areas, sites.size(), jars);
    }

    private static Wall wall(List<StringTile> shown, Collection<SiteView> sites) {
        Map<String, String> areaOf = sites.stream().collect(Collectors.toMap(SiteView::code, SiteView::areaName));
        return Wall.of(shown.stream().collect(Collectors.groupingBy(tile -> areaOf.get(tile.siteCode()))));
    }

    private static Map<EstateFilter, Long> choices(List<StringTile> all) {
        Map<EstateFilter, Long> choices = new EnumMap<>(EstateFilter.class);
        for (EstateFilter filter : EstateFilter.values()) {
            choices.put(filter, all.stream().filter(filter::shows).count());
        }
        return choices;
    }

    /** The day at most of the sites: "by Friday" is meant there. */
    private LocalDate today(List<SiteView> sites) {
        Map<ZoneId, Long> zones = sites.stream()
                .map(SiteView::timeZone)
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        ZoneId most = zones.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(ZoneOffset.UTC);
        return LocalDate.ofInstant(clock.instant(), most);
    }
}
