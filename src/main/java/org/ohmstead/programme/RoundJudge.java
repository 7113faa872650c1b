package org.ohmstead.programme;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.rules.Duty;
import org.ohmstead.programme.rules.Evidence;
import org.springframework.stereotype.Component;

/** Tells of rounds what is done by now: what was recorded since the round was planned and meets the duty. */
@Component
class RoundJudge {

    private final InServiceTable strings;
    private final DutyBook book;

    RoundJudge(InServiceTable strings, DutyBook book) {
        this.strings = strings;
        this.book = book;
    }

    List<RoundView> judged(List<RoundView> rounds, Instant now) {
        List<Long> ids = rounds.stream()
                .flatMap(round -> round.stringIds().stream())
                .distinct()
                .toList();
        List<InService> concerned = strings.of(ids);
        Map<Long, InService> surveyed =
                concerned.stream().collect(Collectors.toMap(InService::stringId, Function.identity()));
        Map<String, Duty> duties = new HashMap<>();
        book.of(concerned, string -> LocalDate.ofInstant(now, string.timeZone()))
                .forEach(string -> string.duties()
                        .forEach(duty -> duties.put(
                                string.stringId() + "/" + duty.requirement().code(), duty)));
        return rounds.stream()
                .map(round -> round.with(round.tasks().stream()
                        .map(task ->
                                judged(task, round.madeAt(), duties.get(task.key()), surveyed.get(task.stringId())))
                        .toList()))
                .toList();
    }

    private static RoundTask judged(
            RoundTask task, Instant plannedAt, @Nullable Duty duty, @Nullable InService string) {
        boolean survey = task.requirement().equals(RoundTask.SURVEY);
        LocalDate last = survey ? surveyedOn(string) : lastDone(duty);
        String activity = survey
                ? RoundTask.SURVEY_WORDS
                : duty == null ? task.requirement() : duty.requirement().activity();
        boolean done =
                last != null && string != null && !last.isBefore(LocalDate.ofInstant(plannedAt, string.timeZone()));
        return new RoundTask(task.stringId(), task.stringName(), task.requirement(), activity, task.dueOn(), done);
    }

    private static @Nullable LocalDate surveyedOn(@Nullable InService string) {
        return string == null ? null : string.surveyedOn();
    }

    private static @Nullable LocalDate lastDone(@Nullable Duty duty) {
        Evidence last = duty == null ? null : duty.lastDone();
        return last == null ? null : last.doneOn();
    }
}
