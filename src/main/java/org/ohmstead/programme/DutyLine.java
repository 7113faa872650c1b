package org.ohmstead.programme;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.rules.Branch;
import org.ohmstead.programme.rules.Duty;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.programme.rules.Evidence;
import org.ohmstead.programme.rules.Interval;
import org.ohmstead.programme.rules.Requirement;
import org.ohmstead.programme.rules.RulePack;
import org.ohmstead.programme.rules.Span;

/**
 * One line of a report on a period: a span of a requirement at a string, as of a day.
 *
 * @param branch how the requirement is met as of that day
 * @param limit the longest interval that the pack allows for that branch; null when nothing periodic is asked
 * @param dueOn the last day in time by the pack's longest interval; null when nothing periodic is asked
 * @param ownDueOn the same by the owner's shorter interval; null when there is none
 * @param state against {@code dueOn}: on time, late, missed, waived, due (not yet done nor late) or monitored
 * @param ownState the same against {@code ownDueOn}
 * @param lastDoneOn when it was last done as of that day, also before this span; null when never
 * @param evidence what was done, with the id of the survey, visit or capacity test; null while it is not done
 * @param reason one or two sentences
 */
public record DutyLine(
        long stringId,
        LocalDate asOf,
        String pack,
        int packVersion,
        Requirement requirement,
        Branch branch,
        @Nullable Interval limit,
        @Nullable LocalDate dueOn,
        @Nullable LocalDate ownDueOn,
        @Nullable LocalDate doneOn,
        @Nullable LocalDate lastDoneOn,
        DutyState state,
        @Nullable DutyState ownState,
        @Nullable Evidence evidence,
        String reason) {

    /**
     * Every span that fell due or was done from {@code first} to {@code last}, and the one that runs as of the duties'
     * day, however long it is overdue or far ahead: each requirement has at least one line.
     */
    static List<DutyLine> of(StringDuties duties, LocalDate first, LocalDate last) {
        RulePack pack = duties.pack();
        return pack == null
                ? List.of()
                : duties.duties().stream()
                        .flatMap(duty -> lines(duties, pack, duty, first, last))
                        .toList();
    }

    private static Stream<DutyLine> lines(
            StringDuties duties, RulePack pack, Duty duty, LocalDate first, LocalDate last) {
        Span running = duty.running();
        Stream<Span> named =
                duty.spans().stream().filter(span -> Objects.equals(span, running) || span.concerns(first, last));
        Stream<DutyLine> lines = named.map(span -> line(duties, pack, duty, span));
        return running == null ? Stream.concat(lines, Stream.of(monitored(duties, pack, duty))) : lines;
    }

    private static DutyLine line(StringDuties duties, RulePack pack, Duty duty, Span span) {
        return new DutyLine(
                duties.stringId(),
                duties.asOf(),
                pack.code(),
                pack.version(),
                duty.requirement(),
                duty.branch(),
                duty.branch().interval(),
                span.dueOn(),
                span.ownDueOn(),
                span.doneOn(),
                lastDoneOn(duty),
                span.state(),
                span.ownState(),
                span.done(),
                span.reason());
    }

    private static DutyLine monitored(StringDuties duties, RulePack pack, Duty duty) {
        return new DutyLine(
                duties.stringId(),
                duties.asOf(),
                pack.code(),
                pack.version(),
                duty.requirement(),
                duty.branch(),
                null,
                null,
                null,
                null,
                lastDoneOn(duty),
                duty.state(),
                null,
                null,
                duty.reason());
    }

    private static @Nullable LocalDate lastDoneOn(Duty duty) {
        Evidence last = duty.lastDone();
        return last == null ? null : last.doneOn();
    }
}
