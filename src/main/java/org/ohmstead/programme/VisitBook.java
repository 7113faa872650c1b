package org.ohmstead.programme;

import static org.ohmstead.access.Permission.HAND_IN_SURVEYS;
import static org.ohmstead.access.Permission.SEE_ESTATE;
import static org.ohmstead.access.Permission.SETTLE_SURVEYS;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Visits and what was looked at on them, apart from readings. Append-only: a wrong one is voided. */
@Service
@Transactional
public class VisitBook {

    private final FleetRegister register;
    private final VisitTable table;
    private final NextDateKeeping dates;
    private final Access access;
    private final AuditTrail audit;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    VisitBook(
            FleetRegister register,
            VisitTable table,
            NextDateKeeping dates,
            Access access,
            AuditTrail audit,
            ApplicationEventPublisher events,
            Clock clock) {
        this.register = register;
        this.table = table;
        this.dates = dates;
        this.access = access;
        this.audit = audit;
        this.events = events;
        this.clock = clock;
    }

    /**
     * @return the visit's id
     * @throws NotFound when there is no such string within reach
     * @throws Refused when nothing was looked at, or the day lies ahead or before the string came into service
     */
    public long record(NewVisit visit) {
        StringView string = inReach(HAND_IN_SURVEYS, visit.stringId());
        requirePlausible(visit, string);
        long id = table.insert(visit, access.current().username());
        audit.record(
                "visit recorded",
                "visit",
                String.valueOf(id),
                string.areaId(),
                Map.of("string", string.title(), "on", visit.visitedOn().toString()));
        changed(string);
        return id;
    }

    /** Enters past visits of many strings; for what comes from another record. Not announced one by one. */
    public void recordHistory(List<NewVisit> visits) {
        access.require(SETTLE_SURVEYS);
        List<Long> stringIds =
                visits.stream().map(NewVisit::stringId).distinct().toList();
        stringIds.forEach(id -> inReach(SETTLE_SURVEYS, id));
        table.insertAll(visits, access.current().username());
        audit.record("visit history loaded", "visits", "", null, Map.of("visits", visits.size()));
        dates.recompute(stringIds);
    }

    /** @throws Conflict when it is voided already */
    public void voidVisit(long visitId, String reason) {
        access.require(SETTLE_SURVEYS);
        VisitView visit = table.find(visitId).orElseThrow(() -> NotFound.of("visit", visitId));
        StringView string = inReach(SETTLE_SURVEYS, visit.stringId());
        if (reason.isBlank()) {
            throw new Refused("Give the reason, so that others understand it later.");
        }
        if (visit.voidedBecause() != null) {
            throw new Conflict("Visit " + visitId + " is voided already: " + visit.voidedBecause());
        }
        table.voidVisit(visitId, reason.strip(), access.current().username());
        audit.record("visit voided", "visit", String.valueOf(visitId), string.areaId(), Map.of("reason", reason));
        changed(string);
    }

    /** Of a string, the latest first, voided ones among them. */
    @Transactional(readOnly = true)
    public List<VisitView> visitsOf(long stringId) {
        inReach(SEE_ESTATE, stringId);
        return table.of(stringId);
    }

    @Transactional(readOnly = true)
    public VisitView visit(long visitId) {
        access.require(SEE_ESTATE);
        VisitView visit = table.find(visitId).orElseThrow(() -> NotFound.of("visit", visitId));
        inReach(SEE_ESTATE, visit.stringId());
        return visit;
    }

    private StringView inReach(Permission permission, long stringId) {
        access.require(permission);
        StringView string = register.string(stringId);
        access.require(permission, string.areaId());
        return string;
    }

    private void requirePlausible(NewVisit visit, StringView string) {
        if (visit.items().isEmpty()) {
            throw new Refused("Nothing was looked at; mark at least one point of the list.");
        }
        SiteView site = register.site(string.siteCode());
        LocalDate today = LocalDate.ofInstant(clock.instant(), site.timeZone());
        if (visit.visitedOn().isAfter(today)) {
            throw new Refused("The visit lies ahead: at the site it is " + today + ".");
        }
        if (visit.visitedOn().isBefore(string.inServiceOn())) {
            throw new Refused("The string came into service on " + string.inServiceOn() + ", after that visit.");
        }
    }

    private void changed(StringView string) {
        dates.recompute(List.of(string.id()));
        events.publishEvent(new VisitsChanged(string.id()));
    }
}
