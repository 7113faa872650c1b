package org.ohmstead.programme;

import static org.ohmstead.access.Permission.EDIT_REGISTER;
import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Rounds: duties grouped into visits, suggested, assigned, adjusted and cancelled. */
@Service
@Transactional
public class Rounds {

    private static final int LONGEST_PLAN_DAYS = 400;

    private final FleetRegister register;
    private final RoundPlanning planning;
    private final RoundTable table;
    private final RoundJudge judge;
    private final Access access;
    private final AuditTrail audit;
    private final Clock clock;

    Rounds(
            FleetRegister register,
            RoundPlanning planning,
            RoundTable table,
            RoundJudge judge,
            Access access,
            AuditTrail audit,
            Clock clock) {
        this.register = register;
        this.planning = planning;
        this.table = table;
        this.judge = judge;
        this.access = access;
        this.audit = audit;
        this.clock = clock;
    }

    /**
     * Proposes visits for some weeks; changes nothing. What standing rounds do in time is not proposed again.
     *
     * @param first moved to today when it lies before
     * @param visitsADay that one crew can make
     * @param area code; null for all in reach
     */
    @Transactional(readOnly = true)
    public RoundPlan suggest(LocalDate first, LocalDate last, int visitsADay, @Nullable String area) {
        access.require(SEE_ESTATE);
        LocalDate today = today(area);
        LocalDate from = first.isBefore(today) ? today : first;
        if (last.isBefore(from) || last.isAfter(from.plusDays(LONGEST_PLAN_DAYS))) {
            throw new Refused("A plan ends between its first day, " + from + ", and " + LONGEST_PLAN_DAYS
                    + " days later, not on " + last + ".");
        }
        if (visitsADay < 1 || visitsADay > 50) {
            throw new Refused("A crew makes between 1 and 50 visits a day, not " + visitsADay + ".");
        }
        return planning.plan(
                clock.instant(),
                from,
                last,
                visitsADay,
                site -> area == null || site.areaCode().equals(area));
    }

    /**
     * Makes rounds of suggestions; the crew is that of the area until somebody else is named.
     *
     * @param keys of the suggestions to take, by {@link SuggestedRound#key()}
     */
    public List<Long> adopt(
            LocalDate first, LocalDate last, int visitsADay, @Nullable String area, Collection<String> keys) {
        access.require(EDIT_REGISTER);
        Set<String> left = new HashSet<>(keys);
        List<Long> made = new ArrayList<>();
        for (SuggestedRound round : suggest(first, last, visitsADay, area).rounds()) {
            if (left.remove(round.key())) {
                made.add(make(round));
            }
        }
        if (!left.isEmpty()) {
            throw new Conflict("The plan has changed meanwhile: " + String.join(", ", left)
                    + " is no longer in it. Look at it again.");
        }
        return made;
    }

    private long make(SuggestedRound round) {
        SiteView site = register.site(round.siteCode());
        access.require(EDIT_REGISTER, site.areaId());
        String crew = "Crew " + site.areaName();
        long id = table.insert(
                site.id(), round.on(), crew, "", round.tasks(), access.current().username());
        audit.record(
                "round planned",
                "round",
                String.valueOf(id),
                site.areaId(),
                Map.of("site", site.code(), "on", round.on().toString()));
        return id;
    }

    /**
     * Moves a round, or names another crew.
     *
     * @param sequence of the round as it was looked at
     * @throws Conflict when somebody else changed it meanwhile
     */
    public void change(long id, int sequence, LocalDate on, String crew, String note) {
        RoundView round = editable(id);
        if (on.isBefore(todayAt(round.siteCode()))) {
            throw new Refused("A round lies ahead: choose today or a later day, not " + on + ".");
        }
        if (!table.change(id, sequence, on, crew.strip(), note.strip())) {
            throw new Conflict("Somebody else changed or cancelled this round in the meantime. Look at it again.");
        }
        audit.record(
                "round changed",
                "round",
                String.valueOf(id),
                register.site(round.siteCode()).areaId(),
                Map.of("on", on.toString(), "crew", crew.strip()));
    }

    /** Its duties are open to be planned again. */
    public void cancel(long id, String reason) {
        RoundView round = editable(id);
        if (reason.isBlank()) {
            throw new Refused("Give the reason, so that the crew understands it.");
        }
        if (!table.cancel(id, reason.strip())) {
            throw new Conflict("This round was cancelled already.");
        }
        audit.record(
                "round cancelled",
                "round",
                String.valueOf(id),
                register.site(round.siteCode()).areaId(),
                Map.of("reason", reason.strip()));
    }

    private RoundView editable(long id) {
        access.require(EDIT_REGISTER);
        return round(id);
    }

    /** By day, cancelled ones among them, with what is done by now. */
    @Transactional(readOnly = true)
    public List<RoundView> between(LocalDate first, LocalDate last) {
        access.require(SEE_ESTATE);
        return judge.judged(table.between(first, last, access.reach()), clock.instant());
    }

    /** @throws NotFound when there is none within reach */
    @Transactional(readOnly = true)
    public RoundView round(long id) {
        access.require(SEE_ESTATE);
        RoundView round = table.find(id, access.reach()).orElseThrow(() -> NotFound.of("round", id));
        return judge.judged(List.of(round), clock.instant()).get(0);
    }

    /**
     * The first day on which a plan can begin: today at the sites of the area; where their zones differ, the latest of
     * their todays, so that no visit lies in the past.
     *
     * @param area code; null for all in reach
     */
    @Transactional(readOnly = true)
    public LocalDate today(@Nullable String area) {
        access.require(SEE_ESTATE);
        return register.sites().stream()
                .filter(site -> area == null || site.areaCode().equals(area))
                .map(site -> LocalDate.ofInstant(clock.instant(), site.timeZone()))
                .max(Comparator.naturalOrder())
                .orElseGet(() -> LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC));
    }

    /** In the site's calendar. */
    @Transactional(readOnly = true)
    public LocalDate todayAt(String siteCode) {
        access.require(SEE_ESTATE);
        return LocalDate.ofInstant(clock.instant(), register.site(siteCode).timeZone());
    }
}
