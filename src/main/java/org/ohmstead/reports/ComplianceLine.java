package org.ohmstead.reports;

import java.time.LocalDate;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.rules.DutyState;

/**
 * One span of one requirement at one string.
 *
 * @param timeZone of the site, in whose calendar all days of the line are
 * @param dueOn by the pack's longest interval; null when nothing periodic is asked
 * @param ownDueOn by the owner's shorter interval; null when there is none
 * @param evidence "survey 12 (60 of 60)"; empty while it is not done
 * @param surveyId when the evidence is a survey
 */
public record ComplianceLine(
        String area,
        String site,
        String siteName,
        String timeZone,
        long stringId,
        String string,
        String pack,
        String requirement,
        String activity,
        String clause,
        String provenance,
        String interval,
        @Nullable LocalDate lastDoneOn,
        @Nullable LocalDate dueOn,
        @Nullable LocalDate ownDueOn,
        @Nullable LocalDate doneOn,
        DutyState state,
        @Nullable DutyState ownState,
        String evidence,
        @Nullable Long surveyId,
        String reason) {

    static final Comparator<ComplianceLine> ORDER = Comparator.comparing(ComplianceLine::area)
            .thenComparing(ComplianceLine::site)
            .thenComparing(ComplianceLine::string)
            .thenComparing(ComplianceLine::pack)
            .thenComparing(ComplianceLine::requirement)
            .thenComparing(ComplianceLine::dueOn, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparing(ComplianceLine::doneOn, Comparator.nullsLast(Comparator.naturalOrder()));

    /** Whether a reader must look at it: late, missed or waived, by the pack or by the owner's interval. */
    public boolean isException() {
        return asksToBeRead(state) || ownState != null && asksToBeRead(ownState);
    }

    private static boolean asksToBeRead(DutyState state) {
        return state == DutyState.LATE || state == DutyState.MISSED || state == DutyState.WAIVED;
    }
}
