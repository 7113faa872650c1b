package org.ohmstead.programme.rules;

import java.time.LocalDate;

/** Somebody excused a duty for a while; the due day itself does not move. */
public record Waiver(LocalDate grantedOn, LocalDate untilOn, String reason) {

    /** It excuses the span that was running when it was granted, up to its last day. */
    boolean excuses(LocalDate spanFrom, LocalDate judgedOn) {
        return !grantedOn.isBefore(spanFrom) && !grantedOn.isAfter(judgedOn) && !judgedOn.isAfter(untilOn);
    }
}
