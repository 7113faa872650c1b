package org.ohmstead.programme.web;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.programme.rules.Duty;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.programme.rules.Evidence;
import org.ohmstead.programme.rules.Interval;
import org.ohmstead.programme.rules.Span;

/**
 * A duty as a page shows it.
 *
 * @param how the elected branch; null where there is no choice
 * @param limit "4 calendar months"
 * @param past the latest spans first
 */
public record DutyRow(
        String code,
        String activity,
        String clause,
        String provenance,
        @Nullable String how,
        @Nullable String limit,
        DutyState state,
        Urgency asks,
        @Nullable LocalDate dueOn,
        @Nullable LocalDate standardDueOn,
        @Nullable Shown lastDone,
        String reason,
        List<Past> past) {

    private static final int SOON_DAYS = 31;
    private static final int PAST_SHOWN = 8;

    /**
     * What shows that something was done.
     *
     * @param address of its page; null where it has none
     */
    public record Shown(
            LocalDate on, String words, @Nullable String address) {

        static Shown of(Evidence evidence) {
            String address = evidence.kind().isReading()
                    ? "/surveys/" + evidence.recordId()
                    : evidence.kind().isCheck()
                            ? "/visits/" + evidence.recordId()
                            : "/capacity-tests/" + evidence.recordId();
            return new Shown(evidence.doneOn(), evidence.record(), address);
        }
    }

    /** A span that ended. */
    public record Past(
            LocalDate dueOn,
            @Nullable Shown done,
            DutyState state,
            @Nullable LocalDate ownDueOn,
            @Nullable DutyState ownState) {}

    static DutyRow of(Duty duty) {
        Interval limit = duty.branch().interval();
        return new DutyRow(
                duty.requirement().code(),
                duty.requirement().activity(),
                duty.requirement().clause(),
                duty.requirement().provenance().words(),
                duty.requirement().isEitherOr() ? duty.branch().words() : null,
                limit == null ? null : limit.words(),
                duty.state(),
                asks(duty),
                duty.dueOn(),
                duty.standardDueOn(),
                duty.lastDone() == null ? null : Shown.of(duty.lastDone()),
                duty.reason(),
                past(duty));
    }

    private static List<Past> past(Duty duty) {
        List<Span> ended = duty.spans().stream()
                .filter(span -> span != duty.running())
                .sorted(java.util.Comparator.comparing(Span::from).reversed())
                .limit(PAST_SHOWN)
                .toList();
        return ended.stream()
                .map(span -> new Past(
                        span.dueOn(),
                        span.done() == null ? null : Shown.of(span.done()),
                        span.state(),
                        span.ownDueOn(),
                        span.ownState()))
                .toList();
    }

    /** The disc beside the word: the fuller, the sooner somebody must go. */
    private static Urgency asks(Duty duty) {
        LocalDate due = duty.dueOn();
        if (duty.state() == DutyState.MISSED || (due != null && duty.state().isOpen() && due.isBefore(duty.asOf()))) {
            return Urgency.ACT;
        }
        boolean soon = due != null && ChronoUnit.DAYS.between(duty.asOf(), due) <= SOON_DAYS;
        if (duty.state() == DutyState.DUE && soon) {
            return Urgency.PLAN;
        }
        return duty.state() == DutyState.WAIVED ? Urgency.RECHECK : Urgency.CLEAR;
    }

    public boolean isOverdueByOwn() {
        return state == DutyState.DUE && asks == Urgency.ACT;
    }
}
