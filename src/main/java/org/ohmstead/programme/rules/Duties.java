package org.ohmstead.programme.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a pack asks of a string and how that stands, as a pure function of what was known on a day.
 *
 * <p>Every completion starts a new span. A span that runs while the owner changes the branch ends on the earliest of the
 * days that the branches in force during it allow, so that a change never moves a deadline away. Something done on or
 * before the due day is on time; a day later is late.
 */
public final class Duties {

    private Duties() {}

    /** One per requirement, in the pack's order. */
    public static List<Duty> of(RulePack pack, Function<Requirement, DutyCase> cases, LocalDate asOf) {
        return pack.requirements().stream()
                .map(requirement -> of(requirement, cases.apply(requirement), asOf))
                .toList();
    }

    public static Duty of(Requirement requirement, DutyCase known, LocalDate asOf) {
        return new Walk(requirement, known.asOf(asOf), asOf).duty();
    }

    /** One walk along the history of a requirement. */
    private static final class Walk {

        private final Requirement requirement;
        private final DutyCase known;
        private final LocalDate asOf;
        private final Elected elected;
        private final List<Span> spans = new ArrayList<>();
        private @Nullable LocalDate from;
        private @Nullable Evidence lastDone;

        Walk(Requirement requirement, DutyCase known, LocalDate asOf) {
            this.requirement = requirement;
            this.known = known;
            this.asOf = asOf;
            this.elected = new Elected(requirement, known.elections());
        }

        Duty duty() {
            begin();
            for (Map.Entry<LocalDate, @Nullable Evidence> event : events()) {
                take(event.getKey(), event.getValue());
            }
            Branch branch = elected.on(asOf);
            if (from != null && branch.isPeriodic()) {
                spans.add(new SpanJudge(known, elected, asOf).running(from));
            }
            Integer own = new SpanJudge(known, elected, asOf).ownMonths();
            return new Duty(requirement, branch, asOf, spans, lastDone, own);
        }

        private void begin() {
            for (Evidence done : known.history()) {
                if (!done.doneOn().isAfter(known.since())
                        && elected.on(done.doneOn()).isShownBy(done)) {
                    lastDone = done;
                }
            }
            if (elected.on(known.since()).isPeriodic() && !known.since().isAfter(asOf)) {
                from = lastDone == null ? known.since() : lastDone.doneOn();
            }
        }

        /** Completions, and the days on which monitoring began or ended, after the start. */
        private List<Map.Entry<LocalDate, @Nullable Evidence>> events() {
            List<Map.Entry<LocalDate, @Nullable Evidence>> events = new ArrayList<>();
            known.history().stream()
                    .filter(done -> done.doneOn().isAfter(known.since()))
                    .filter(done -> elected.on(done.doneOn()).isShownBy(done))
                    .forEach(done -> events.add(new java.util.AbstractMap.SimpleEntry<>(done.doneOn(), done)));
            known.elections().stream()
                    .filter(election -> election.from().isAfter(known.since()))
                    .forEach(election -> events.add(new java.util.AbstractMap.SimpleEntry<>(election.from(), null)));
            events.sort(Map.Entry.comparingByKey());
            return events;
        }

        private void take(LocalDate day, @Nullable Evidence done) {
            if (done != null) {
                complete(done);
            } else if (elected.on(day).isPeriodic()) {
                from = from == null ? day : from;
            } else if (from != null) {
                new SpanJudge(known, elected, day).missedBefore(from).ifPresent(spans::add);
                from = null;
            }
        }

        private void complete(Evidence done) {
            if (from != null && done.doneOn().isAfter(from)) {
                spans.add(new SpanJudge(known, elected, done.doneOn()).completed(from, done));
            }
            from = done.doneOn();
            lastDone = done;
        }
    }
}
