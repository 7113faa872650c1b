package org.ohmstead.overview;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.RunView;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
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
        List<Tiles.Placed> placed = tiles.placed();
        List<StringTile> all = placed.stream().map(Tiles.Placed::tile).toList();
        TileTable.Places places = tiles.places();
        return new EstateView(
                EstateSentence.of(all, LocalDate.ofInstant(clock.instant(), places.timeZone())),
                EstateCounts.of(
                        all,
                        places.areas(),
                        places.sites(),
                        placed.stream().mapToLong(Tiles.Placed::jars).sum()),
                wall(placed, filter),
                FirstInLine.of(all, FIRST),
                held.latest(HELD_SHOWN),
                visits.lastWeek(),
                choices(all),
                assessments.lastRun().map(EstateOverview::when).orElse(null));
    }

    /** Every string that needs someone, first in line first. */
    public List<StringTile> line() {
        access.require(Permission.SEE_ESTATE);
        return FirstInLine.of(tiles.all(), Integer.MAX_VALUE);
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
        List<StringTile> strings = tiles.all().stream()
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
        List<StringTile> strings = tiles.at(code);
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

    private static Wall wall(List<Tiles.Placed> placed, EstateFilter filter) {
        return Wall.of(placed.stream()
                .filter(one -> filter.shows(one.tile()))
                .collect(Collectors.groupingBy(
                        Tiles.Placed::areaName, Collectors.mapping(Tiles.Placed::tile, Collectors.toList()))));
    }

    private static Map<EstateFilter, Long> choices(List<StringTile> all) {
        Map<EstateFilter, Long> choices = new EnumMap<>(EstateFilter.class);
        for (EstateFilter filter : EstateFilter.values()) {
            choices.put(filter, all.stream().filter(filter::shows).count());
        }
        return choices;
    }
}
