package org.ohmstead.reports;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.worklist.UnresolvedWork;

/**
 * What was done on time in a quarter and what was not.
 *
 * @param area code of the one area it speaks of; null for everything in reach
 * @param asOf the day whose knowledge it shows: the quarter's last, or today while it runs
 * @param unresolved what was open on the work list at the end of that day; the signature does not cover it
 * @param signOff the latest signature of this scope; null while nobody has signed
 * @param sha256 of the lines as CSV, hexadecimal
 */
public record ComplianceSummary(
        Quarter quarter,
        @Nullable String area,
        LocalDate asOf,
        List<ComplianceLine> lines,
        List<ComplianceTotal> totals,
        List<UnresolvedWork> unresolved,
        String sha256,
        @Nullable SignOff signOff) {

    public ComplianceSummary {
        lines = List.copyOf(lines);
        totals = List.copyOf(totals);
        unresolved = List.copyOf(unresolved);
    }

    public boolean isOver() {
        return asOf.equals(quarter.last());
    }

    public long count(DutyState state) {
        return lines.stream().filter(line -> line.state() == state).count();
    }

    public List<ComplianceGroup> byArea() {
        return ComplianceGroup.of(totals, ComplianceTotal::area);
    }

    public List<ComplianceGroup> byPack() {
        return ComplianceGroup.of(totals, ComplianceTotal::pack);
    }

    public List<ComplianceLine> exceptions() {
        return lines.stream().filter(ComplianceLine::isException).toList();
    }

    /** "compliance-2026-Q3-Europe-London": names the quarter and, when all sites share one, the time zone. */
    public String fileName() {
        List<String> zones =
                lines.stream().map(ComplianceLine::timeZone).distinct().toList();
        String zone = zones.size() == 1 ? zones.get(0).replace('/', '-') : "site-time";
        return "compliance-" + quarter + (area == null ? "" : "-" + area) + "-" + zone;
    }
}
