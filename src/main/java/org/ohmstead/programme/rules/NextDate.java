package org.ohmstead.programme.rules;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * When a string is to be visited next.
 *
 * @param dueOn the last day that is still in time: the earliest of the five below
 * @param intervalDueOn by the owner's survey interval
 * @param recheckBy by a judgement that asks for another reading; null when none does
 * @param dutyDueOn by the programme, the owner's shorter intervals included; null without a programme
 * @param riskOn by the forecast; null when it gives none
 * @param demandedBy by work that asks for a reading; null when none does
 * @param reason why, in a sentence or two
 */
public record NextDate(
        LocalDate dueOn,
        Governs governs,
        LocalDate intervalDueOn,
        @Nullable LocalDate recheckBy,
        @Nullable LocalDate dutyDueOn,
        @Nullable LocalDate riskOn,
        @Nullable LocalDate demandedBy,
        String reason) {

    /** Which of the dates governs. */
    public enum Governs {
        INTERVAL,
        RECHECK,
        DUTY,
        RISK,
        WORK
    }
}
