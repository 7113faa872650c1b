package org.ohmstead.overview;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.OverruleView;
import org.ohmstead.kernel.Urgency;

/** Everything the page of a string says, in numbers. */
public record StringPage(
        Plate plate,
        @Nullable Judged judged,
        @Nullable Due due,
        List<JarLine> jars,
        List<LinkLine> links,
        List<SurveyLine> surveys) {

    /** Who it is. */
    public record Plate(
            long stringId,
            String name,
            String siteCode,
            String siteName,
            String areaName,
            ZoneId timeZone,
            String jarTypeCode,
            String build,
            List<Integer> tiers,
            LocalDate inServiceOn,
            @Nullable LocalDate retiredOn) {

        public int positions() {
            return tiers.stream().mapToInt(Integer::intValue).sum();
        }
    }

    /**
     * What was judged last.
     *
     * @param urgency with what people overruled
     */
    public record Judged(
            Urgency urgency,
            Sentence sentence,
            LocalDate asOf,
            Instant assessedAt,
            List<Why> reasons,
            List<String> advice,
            List<String> doubts,
            List<Fact> facts,
            Urgency byEngine,
            @Nullable OverruleView overruled) {}

    /** @param value already in words with its unit */
    public record Fact(String name, String value, @Nullable String note) {}

    /**
     * When someone must come, and which rule says so.
     *
     * @param riskReason why the forecast governs; null when it does not
     */
    public record Due(
            LocalDate on,
            long daysAway,
            String governs,
            String reason,
            LocalDate intervalDueOn,
            @Nullable String riskReason) {}

    public record SurveyLine(
            long surveyId,
            LocalDate takenOn,
            String takenBy,
            @Nullable String instrument,
            int jarsRead,
            int positions) {}

    public Urgency urgency() {
        return judged == null ? Urgency.CLEAR : judged.urgency();
    }

    /** What asks for someone, worst first. */
    public List<JarLine> shortlist() {
        return jars.stream()
                .filter(JarLine::asks)
                .sorted(java.util.Comparator.comparing(JarLine::urgency)
                        .reversed()
                        .thenComparing(JarLine::position))
                .toList();
    }

    public List<LinkLine> hotspots() {
        return links.stream()
                .filter(LinkLine::asks)
                .sorted(java.util.Comparator.comparing(LinkLine::urgency)
                        .reversed()
                        .thenComparing(LinkLine::ordinal))
                .toList();
    }
}
