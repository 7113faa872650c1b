package org.ohmstead.programme.rules;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Somebody excused a duty for a while; the due day itself does not move.
 *
 * @param untilOn its last day
 * @param endedOn from this day on it excuses nothing, whatever its last day; null while nobody ended it early
 */
public record Waiver(
        LocalDate grantedOn,
        LocalDate untilOn,
        String reason,
        @Nullable LocalDate endedOn) {

    public Waiver(LocalDate grantedOn, LocalDate untilOn, String reason) {
        this(grantedOn, untilOn, reason, null);
    }

    /** It excuses the span that was running when it was granted, up to its last day. */
    boolean excuses(LocalDate spanFrom, LocalDate judgedOn) {
        return !grantedOn.isBefore(spanFrom) && !grantedOn.isAfter(judgedOn) && lasts(judgedOn);
    }

    private boolean lasts(LocalDate day) {
        return !day.isAfter(untilOn) && (endedOn == null || day.isBefore(endedOn));
    }

    /** What was known of it at the end of that day. */
    Waiver asOf(LocalDate day) {
        return endedOn == null || !endedOn.isAfter(day) ? this : new Waiver(grantedOn, untilOn, reason, null);
    }
}
