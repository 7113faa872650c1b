package org.ohmstead.reports;

import static org.ohmstead.access.Permission.SEE_ESTATE;
import static org.ohmstead.access.Permission.SIGN_OFF;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.SiteView;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Sha256;
import org.ohmstead.programme.DutyLine;
import org.ohmstead.programme.Programme;
import org.ohmstead.programme.rules.Evidence;
import org.ohmstead.reports.render.Report;
import org.ohmstead.worklist.WorkList;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Each quarter's summary of what was done on time, and the signature under it. */
@Service
public class Compliance {

    private final Programme programme;
    private final FleetRegister register;
    private final WorkList work;
    private final SignOffTable signOffs;
    private final Access access;
    private final AuditTrail audit;
    private final Clock clock;

    Compliance(
            Programme programme,
            FleetRegister register,
            WorkList work,
            SignOffTable signOffs,
            Access access,
            AuditTrail audit,
            Clock clock) {
        this.programme = programme;
        this.register = register;
        this.work = work;
        this.signOffs = signOffs;
        this.access = access;
        this.audit = audit;
        this.clock = clock;
    }

    /** The latest quarter that is over. */
    public Quarter latestFinished() {
        access.require(SEE_ESTATE);
        return Quarter.of(today()).before();
    }

    /**
     * As known on the quarter's last day, or today while it runs; of one area or, for null, of everything in reach.
     *
     * @throws NotFound when there is no such area within reach
     */
    @Transactional(readOnly = true)
    public ComplianceSummary summary(Quarter quarter, @Nullable String area) {
        access.require(SEE_ESTATE);
        Long areaId = area == null ? null : register.area(area).id();
        boolean over = quarter.last().isBefore(today());
        List<ComplianceLine> lines = lines(quarter, over ? quarter.last() : null, area);
        LocalDate asOf = over ? quarter.last() : today();
        byte[] canonical = ComplianceTables.canonical(lines);
        return new ComplianceSummary(
                quarter,
                area,
                asOf,
                lines,
                ComplianceTotal.of(lines),
                work.unresolved(asOf, area),
                HexFormat.of().formatHex(Sha256.of(canonical)),
                signOffs.latest(quarter, areaId, canonical).orElse(null));
    }

    /** The same as a report, for CSV and XLSX. */
    public Report report(ComplianceSummary summary) {
        return ComplianceTables.report(summary);
    }

    /** The same with fewer columns, for PDF. */
    public Report printed(ComplianceSummary summary) {
        return ComplianceTables.printed(summary);
    }

    /**
     * Puts the signer's name under the quarter as it stands. Of the whole estate only by someone who sees all of it.
     *
     * @param sha256 of what the signer has seen, hexadecimal
     * @throws Conflict when the quarter is not over, or says something else by now
     */
    @Transactional
    public ComplianceSummary sign(Quarter quarter, @Nullable String area, String sha256, String note) {
        access.require(SIGN_OFF);
        if (area == null && !access.reach().everywhere()) {
            throw new AccessDeniedException("The whole estate is signed by someone whose reach is every area.");
        }
        ComplianceSummary summary = summary(quarter, area);
        requireFinal(summary, sha256);
        Long areaId = area == null ? null : register.area(area).id();
        byte[] canonical = ComplianceTables.canonical(summary.lines());
        String signer = access.current().displayName();
        signOffs.add(quarter, areaId, Sha256.of(canonical), canonical, note.strip(), signer, clock.instant());
        audit.record("signed off", "quarter", quarter.toString(), areaId, Map.of("sha256", sha256));
        return summary(quarter, area);
    }

    private static void requireFinal(ComplianceSummary summary, String sha256) {
        if (!summary.isOver()) {
            throw new Conflict("The quarter " + summary.quarter() + " is not over; it can be signed from "
                    + summary.quarter().last().plusDays(1) + ".");
        }
        if (!summary.sha256().equals(sha256)) {
            throw new Conflict("The summary has changed since you saw it. Read it again, then sign.");
        }
    }

    private List<ComplianceLine> lines(Quarter quarter, @Nullable LocalDate asOf, @Nullable String area) {
        Map<Long, StringView> strings =
                register.strings().stream().collect(Collectors.toMap(StringView::id, Function.identity()));
        Map<Long, SiteView> sites =
                register.sites().stream().collect(Collectors.toMap(SiteView::id, Function.identity()));
        List<ComplianceLine> lines = new ArrayList<>();
        programme.eachLine(quarter.first(), quarter.last(), asOf, line -> {
            StringView string = Objects.requireNonNull(strings.get(line.stringId()));
            SiteView site = Objects.requireNonNull(sites.get(string.siteId()));
            if (area == null || area.equals(site.areaCode())) {
                lines.add(line(line, string, site));
            }
        });
        lines.sort(ComplianceLine.ORDER);
        return lines;
    }

    private static ComplianceLine line(DutyLine line, StringView string, SiteView site) {
        Evidence evidence = line.evidence();
        return new ComplianceLine(
                site.areaCode(),
                site.code(),
                site.name(),
                site.timeZone().getId(),
                string.id(),
                string.name(),
                line.pack() + " " + line.packVersion(),
                line.requirement().code(),
                line.requirement().activity(),
                line.requirement().clause(),
                line.requirement().provenance().words(),
                line.limit() == null ? "monitored" : line.limit().words(),
                line.lastDoneOn(),
                line.dueOn(),
                line.ownDueOn(),
                line.doneOn(),
                line.state(),
                line.ownState(),
                evidence == null ? "" : words(evidence),
                evidence != null && evidence.kind().isReading() ? evidence.recordId() : null,
                line.reason().replaceAll("\\s+", " "));
    }

    private static String words(Evidence evidence) {
        return evidence.outOf() > 1
                ? evidence.record() + " (" + evidence.covered() + " of " + evidence.outOf() + ")"
                : evidence.record();
    }

    /** The earliest of the sites' todays: a quarter is over when it is over everywhere. */
    private LocalDate today() {
        return register.sites().stream()
                .map(site -> LocalDate.ofInstant(clock.instant(), site.timeZone()))
                .min(Comparator.naturalOrder())
                .orElseGet(() -> LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC));
    }
}
