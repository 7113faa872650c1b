package org.ohmstead.overview;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.StringStanding;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarTypeView;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.programme.NextDateView;
import org.ohmstead.programme.Programme;
import org.springframework.stereotype.Component;

/** Puts together what the wall shows of each string in service: one query per source, however many strings. */
@Component
class Tiles {

    private final FleetRegister register;
    private final Assessments assessments;
    private final Programme programme;
    private final Clock clock;

    Tiles(FleetRegister register, Assessments assessments, Programme programme, Clock clock) {
        this.register = register;
        this.assessments = assessments;
        this.programme = programme;
        this.clock = clock;
    }

    List<StringTile> of(Collection<StringView> strings, Collection<SiteView> sites) {
        Map<Long, StringStanding> standings = byId(assessments.standings(), StringStanding::stringId);
        Map<Long, NextDateView> dates = byId(programme.nextDates(), NextDateView::stringId);
        Map<Long, JarTypeView> types = byId(register.jarTypes(), JarTypeView::id);
        Map<Long, SiteView> places = byId(sites, SiteView::id);
        return strings.stream()
                .filter(string -> string.retiredOn() == null && places.containsKey(string.siteId()))
                .map(string -> tile(
                        string,
                        Objects.requireNonNull(places.get(string.siteId())),
                        Objects.requireNonNull(types.get(string.jarTypeId())),
                        standings.get(string.id()),
                        dates.get(string.id())))
                .toList();
    }

    private StringTile tile(
            StringView string,
            SiteView site,
            JarTypeView type,
            @Nullable StringStanding standing,
            @Nullable NextDateView next) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), site.timeZone());
        return new StringTile(
                string.id(),
                site.code(),
                site.name(),
                string.name(),
                type.technology(),
                standing == null ? null : standing.urgency(),
                standing == null ? "Not assessed yet." : headline(standing),
                next == null ? null : next.dueOn(),
                next == null ? null : (int) ChronoUnit.DAYS.between(today, next.dueOn()),
                next == null ? "" : next.reason());
    }

    /** The urgency's word stands beside it already. */
    private static String headline(StringStanding standing) {
        Urgency urgency = standing.urgency();
        String told = standing.headline();
        String prefix = urgency.word() + ": ";
        return told.startsWith(prefix) ? Words.capital(told.substring(prefix.length())) : told;
    }

    private static <V> Map<Long, V> byId(Collection<V> all, Function<V, Long> id) {
        return all.stream().collect(Collectors.toMap(id, Function.identity()));
    }
}
