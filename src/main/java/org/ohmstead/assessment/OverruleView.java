package org.ohmstead.assessment;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/**
 * A person's urgency in place of the engine's.
 *
 * @param unit position of a jar, ordinal of a link; null for the whole string
 * @param unitSince since when that jar sits there or that joint is as it is: it holds for no other
 * @param insteadOf what the engine said on the day
 * @param lastDay the last day on which it holds, at the site
 * @param endedAt when someone ended it before; null while nobody did
 */
public record OverruleView(
        long id,
        long stringId,
        Subject subject,
        @Nullable Integer unit,
        @Nullable LocalDate unitSince,
        Urgency urgency,
        Urgency insteadOf,
        String reason,
        Instant madeAt,
        String madeBy,
        LocalDate lastDay,
        @Nullable Instant endedAt,
        @Nullable String endedBy) {

    /** What is overruled. */
    public enum Subject {
        STRING,
        JAR,
        LINK
    }

    boolean holdsOn(LocalDate today) {
        return endedAt == null && !today.isAfter(lastDay);
    }

    boolean isAbout(Subject wanted, @Nullable Integer number) {
        return subject == wanted && java.util.Objects.equals(unit, number);
    }
}
