package org.ohmstead.worklist.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.rules.Duty;
import org.ohmstead.worklist.model.WorkItem.Asked;
import org.ohmstead.worklist.model.WorkItem.Done;

/** Holds the overdue duties of a string against its programme. The same once more gives no step. */
public final class DutyReckoning {

    private DutyReckoning() {}

    /** @param items the open ones of the string; those that are no duties are left alone */
    public static List<Step> of(long stringId, LocalDate today, List<Duty> duties, List<WorkItem> items) {
        Wants wants = DutyWork.of(duties);
        Map<String, Duty> byCode = duties.stream()
                .collect(Collectors.toMap(duty -> duty.requirement().code(), Function.identity()));
        List<Step> steps = new ArrayList<>();
        Set<WorkKey> open = new HashSet<>();
        for (WorkItem item : items) {
            if (item.isOpen() && item.key().kind() == WorkKind.OVERDUE_DUTY) {
                WorkItem after =
                        followed(item, wants, byCode.get(item.key().subject().requirement()), steps);
                if (after.isOpen()) {
                    open.add(after.key());
                }
            }
        }
        for (Want want : wants.asked()) {
            if (!open.contains(want.key())) {
                steps.add(WorkItem.raised(stringId, want.key(), today, asked(want)));
            }
        }
        return steps;
    }

    private static WorkItem followed(WorkItem item, Wants wants, @Nullable Duty duty, List<Step> steps) {
        Want want = wants.of(item.key());
        if (want != null
                && want.since() != null
                && want.since().equals(item.asked().since())) {
            Asked now = asked(want);
            return now.equals(item.asked()) ? item : take(item.stillAsked(now), steps);
        }
        org.ohmstead.programme.rules.Evidence last = duty == null ? null : duty.lastDone();
        LocalDate since = item.asked().since();
        if (last != null && (since == null || last.doneOn().isAfter(since))) {
            Evidence evidence = new Evidence(kind(last), last.recordId());
            WorkItem done =
                    take(item.doneByFact(new Done(last.doneOn(), "the " + last.record(), "", true), evidence), steps);
            return take(done.prove(evidence, "Done on " + last.doneOn() + "."), steps);
        }
        if (want != null) {
            return take(item.stillAsked(asked(want)), steps);
        }
        String excuse = wants.excuse(item.key());
        String words =
                excuse != null ? excuse : duty == null ? "The programme asks for it no longer." : "No longer overdue.";
        return take(item.dismissByService(words, null), steps);
    }

    private static WorkItem take(Step step, List<Step> steps) {
        steps.add(step);
        return step.after();
    }

    private static Asked asked(Want want) {
        return new Asked(want.since(), want.urgency(), want.by(), want.reason(), want.source(), null, null);
    }

    private static Evidence.Kind kind(org.ohmstead.programme.rules.Evidence evidence) {
        if (evidence.kind().isReading()) {
            return Evidence.Kind.SURVEY;
        }
        return evidence.kind().isCheck() ? Evidence.Kind.VISIT : Evidence.Kind.CAPACITY_TEST;
    }
}
