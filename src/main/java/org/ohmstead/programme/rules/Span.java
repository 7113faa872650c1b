package org.ohmstead.programme.rules;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One stretch of a duty, from a completion (or the start) to the next completion (or the day of asking).
 *
 * @param from counted from here
 * @param dueOn the last day in time by the pack's longest interval
 * @param ownDueOn the same by the owner's shorter interval; null when there is none
 * @param done what ended it; null while it runs
 * @param state against {@code dueOn}
 * @param ownState against {@code ownDueOn}
 * @param reason one or two sentences
 */
public record Span(
        LocalDate from,
        LocalDate dueOn,
        @Nullable LocalDate ownDueOn,
        @Nullable Evidence done,
        DutyState state,
        @Nullable DutyState ownState,
        String reason) {

    /** By the stricter of the two. */
    public LocalDate earliestDueOn() {
        return ownDueOn == null ? dueOn : ownDueOn;
    }

    public @Nullable LocalDate doneOn() {
        return done == null ? null : done.doneOn();
    }

    /** Whether it fell due or was done in these days, both included: what a report of a period must name. */
    public boolean concerns(LocalDate first, LocalDate last) {
        return within(dueOn, first, last) || (done != null && within(done.doneOn(), first, last));
    }

    private static boolean within(LocalDate day, LocalDate first, LocalDate last) {
        return !day.isBefore(first) && !day.isAfter(last);
    }
}
