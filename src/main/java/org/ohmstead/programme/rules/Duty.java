package org.ohmstead.programme.rules;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A requirement at one string, as of a day.
 *
 * @param branch how it is met on that day
 * @param spans oldest first; the last one runs unless the branch asks for nothing periodic
 * @param lastDone also from before the programme began; null when it was never done
 * @param ownMonths the owner's shorter interval as of that day; null when there is none
 */
public record Duty(
        Requirement requirement,
        Branch branch,
        LocalDate asOf,
        List<Span> spans,
        @Nullable Evidence lastDone,
        @Nullable Integer ownMonths) {

    public Duty {
        spans = List.copyOf(spans);
    }

    /** The running span; null when nothing periodic is asked. */
    public @Nullable Span running() {
        Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
        return branch.isPeriodic() && last != null && last.done() == null ? last : null;
    }

    /** How it stands now: due, missed, waived or monitored. */
    public DutyState state() {
        Span running = running();
        return running == null ? DutyState.MONITORED : running.state();
    }

    /** By the stricter of the pack's and the owner's interval; null when nothing periodic is asked. */
    public @Nullable LocalDate dueOn() {
        Span running = running();
        return running == null ? null : running.earliestDueOn();
    }

    /** By the pack's longest interval alone. */
    public @Nullable LocalDate standardDueOn() {
        Span running = running();
        return running == null ? null : running.dueOn();
    }

    /** When it would be due next if it were done on that day; null when nothing periodic is asked. */
    public @Nullable LocalDate dueAfter(LocalDate done) {
        Interval interval = branch.interval();
        if (interval == null) {
            return null;
        }
        LocalDate due = interval.dueAfter(done);
        if (ownMonths == null || ownMonths >= interval.months()) {
            return due;
        }
        LocalDate own = interval.shortenedTo(ownMonths).dueAfter(done);
        return own.isBefore(due) ? own : due;
    }

    /** Why it stands so. */
    public String reason() {
        Span running = running();
        return running == null ? "Monitored and alarmed: no periodic activity is asked." : running.reason();
    }

    /** The spans that a report of these days must name. */
    public List<Span> spansBetween(LocalDate first, LocalDate last) {
        return spans.stream().filter(span -> span.concerns(first, last)).toList();
    }
}
