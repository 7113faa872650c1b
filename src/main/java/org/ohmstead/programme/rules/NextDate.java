package org.ohmstead.programme.rules;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * When a string is to be visited next.
 *
 * @param dueOn the last day that is still in time: the earlier of the two below
 * @param intervalDueOn by the owner's interval
 * @param recheckBy by a judgement that asks for another reading; null when none does
 * @param reason why, one sentence
 */
public record NextDate(
        LocalDate dueOn,
        Governs governs,
        LocalDate intervalDueOn,
        @Nullable LocalDate recheckBy,
        String reason) {

    /** Which of the two dates governs. */
    public enum Governs {
        INTERVAL,
        RECHECK
    }
}
