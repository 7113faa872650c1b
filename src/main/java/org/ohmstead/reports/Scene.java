package org.ohmstead.reports;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.reports.render.Report.Fact;
import org.springframework.stereotype.Component;

/** The sites and strings a report speaks of, and the calendar its days are in. */
@Component
class Scene {

    private final FleetRegister register;
    private final Clock clock;

    Scene(FleetRegister register, Clock clock) {
        this.register = register;
        this.clock = clock;
    }

    /**
     * @param area its code; null for everything in reach
     * @param asOf the latest of the sites' todays
     * @param strings those in service
     */
    record Scope(@Nullable String area, LocalDate asOf, Map<String, SiteView> sites, List<StringView> strings) {

        SiteView site(StringView string) {
            SiteView site = sites.get(string.siteCode());
            if (site == null) {
                throw NotFound.of("site", string.siteCode());
            }
            return site;
        }

        Fact scopeFact() {
            return new Fact("Scope", area == null ? "all areas in reach" : "area " + area);
        }

        Fact zoneFact() {
            return Scene.zoneFact(sites.values());
        }

        /** "warranty-UPLAND-2026-11-25-Europe-London". */
        String fileName(ReportKind kind) {
            return kind.code() + (area == null ? "" : "-" + area) + "-" + asOf + "-" + zoneWord(sites.values());
        }
    }

    /** @throws NotFound when there is no such area within reach */
    Scope of(@Nullable String area) {
        if (area != null) {
            register.area(area);
        }
        Map<String, SiteView> sites = register.sites().stream()
                .filter(site -> area == null || site.areaCode().equals(area))
                .collect(Collectors.toMap(SiteView::code, Function.identity()));
        LocalDate asOf = sites.values().stream()
                .map(this::today)
                .max(Comparator.naturalOrder())
                .orElseGet(() -> LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC));
        List<StringView> strings = register.strings().stream()
                .filter(string -> string.retiredOn() == null && sites.containsKey(string.siteCode()))
                .toList();
        return new Scope(area, asOf, sites, strings);
    }

    LocalDate today(SiteView site) {
        return LocalDate.ofInstant(clock.instant(), site.timeZone());
    }

    static Fact zoneFact(Collection<SiteView> sites) {
        String zones = sites.stream()
                .map(site -> site.timeZone().getId())
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
        return new Fact("Days are of", zones.isEmpty() ? "no site" : "each site's own calendar: " + zones);
    }

    /** For file names: the time zone, or "site-time" where there are several. */
    static String zoneWord(Collection<SiteView> sites) {
        List<String> zones =
                sites.stream().map(site -> site.timeZone().getId()).distinct().toList();
        return zones.size() == 1 ? zones.get(0).replace('/', '-') : "site-time";
    }
}
