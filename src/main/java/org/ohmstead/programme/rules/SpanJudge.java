package org.ohmstead.programme.rules;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Judges one span of a duty as of the day on which it ended, or the day of asking while it runs. */
final class SpanJudge {

    private final DutyCase known;
    private final Elected elected;
    private final LocalDate on;

    SpanJudge(DutyCase known, Elected elected, LocalDate on) {
        this.known = known;
        this.elected = elected;
        this.on = on;
    }

    Span completed(LocalDate from, Evidence done) {
        LocalDate due = elected.dueAfter(from, on);
        LocalDate own = ownDue(from, due);
        return new Span(
                from, due, own, done, closed(from, due), own == null ? null : closed(from, own), told(due, done));
    }

    Span running(LocalDate from) {
        LocalDate due = elected.dueAfter(from, on);
        LocalDate own = ownDue(from, due);
        DutyState state = open(from, due);
        DutyState ownState = own == null ? null : open(from, own);
        return new Span(from, due, own, null, state, ownState, told(from, due, own, state));
    }

    /** What was still owed when monitoring took over; nothing when it was not yet due. */
    Optional<Span> missedBefore(LocalDate from) {
        Span span = running(from);
        return span.state() == DutyState.DUE ? Optional.empty() : Optional.of(span);
    }

    /** The string's own, else the pack owner's; null when there is none. */
    @Nullable
    Integer ownMonths() {
        Integer ofPack = elected.on(on).ownMonths();
        Integer months = ofPack;
        for (OwnInterval own : known.ownIntervals()) {
            if (!own.from().isAfter(on)) {
                months = own.months() == null ? ofPack : own.months();
            }
        }
        return months;
    }

    private @Nullable LocalDate ownDue(LocalDate from, LocalDate due) {
        Integer months = ownMonths();
        Interval standard = elected.on(on).interval();
        if (months == null || standard == null || months >= standard.months()) {
            return null;
        }
        LocalDate own = standard.shortenedTo(months).dueAfter(from);
        return own.isBefore(due) ? own : due;
    }

    private DutyState closed(LocalDate from, LocalDate due) {
        if (!on.isAfter(due)) {
            return DutyState.ON_TIME;
        }
        return waiver(from) == null ? DutyState.LATE : DutyState.WAIVED;
    }

    private DutyState open(LocalDate from, LocalDate due) {
        if (waiver(from) != null) {
            return DutyState.WAIVED;
        }
        return on.isAfter(due) ? DutyState.MISSED : DutyState.DUE;
    }

    private @Nullable Waiver waiver(LocalDate from) {
        return known.waivers().stream()
                .filter(waiver -> waiver.excuses(from, on))
                .findFirst()
                .orElse(null);
    }

    private String told(LocalDate due, Evidence done) {
        long late = ChronoUnit.DAYS.between(due, done.doneOn());
        String by = "Done on " + done.doneOn() + " (" + done.record() + "), ";
        return late <= 0 ? by + "due by " + due + "." : by + days(late) + " after " + due + ".";
    }

    private String told(LocalDate from, LocalDate due, @Nullable LocalDate own, DutyState state) {
        Waiver waiver = waiver(from);
        if (state == DutyState.WAIVED && waiver != null) {
            return "Waived until " + waiver.untilOn() + ": " + waiver.reason() + ". The due day stays " + due + ".";
        }
        long left = ChronoUnit.DAYS.between(on, due);
        String when = left < 0
                ? "Not done: it was due by " + due + ", " + days(-left) + " ago."
                : "Due by " + due + (left == 0 ? ", which is today." : ", in " + days(left) + ".");
        return when + ownWords(own) + shortfall(from);
    }

    private static String ownWords(@Nullable LocalDate own) {
        return own == null ? "" : " By the owner's shorter interval it is due by " + own + ".";
    }

    /** What was done in the span but did not suffice. */
    private String shortfall(LocalDate from) {
        List<Evidence> tried = elected.on(on).tooLittle(known.history()).stream()
                .filter(done -> done.doneOn().isAfter(from))
                .toList();
        if (tried.isEmpty()) {
            return "";
        }
        Evidence last = tried.get(tried.size() - 1);
        return " The " + last.record() + " of " + last.doneOn() + " does not count: it has the "
                + last.kind().words() + " of " + last.covered() + " out of " + last.outOf() + " units.";
    }

    private static String days(long count) {
        return count == 1 ? "1 day" : count + " days";
    }
}
