package org.ohmstead.worklist.model;

import java.util.List;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.programme.rules.Duty;
import org.ohmstead.programme.rules.DutyState;
import org.ohmstead.programme.rules.Span;

/** The duties of a string that are overdue. */
public final class DutyWork {

    private DutyWork() {}

    public static Wants of(List<Duty> duties) {
        Wants wants = new Wants();
        duties.forEach(duty -> look(duty, wants));
        return wants;
    }

    private static void look(Duty duty, Wants wants) {
        Span running = duty.running();
        WorkKey key = new WorkKey(
                WorkKind.OVERDUE_DUTY, Subject.duty(duty.requirement().code()));
        if (running == null) {
            wants.excuse(key, duty.reason());
        } else if (running.state() == DutyState.WAIVED) {
            wants.excuse(key, running.reason());
        } else if (running.state() == DutyState.MISSED) {
            String words = duty.requirement().activity() + ": not done, it was due by " + running.dueOn() + ".";
            wants.add(
                    new Want(key, running.from(), Urgency.ACT, running.earliestDueOn(), words, Source.PROGRAMME, true));
        } else if (running.ownState() == DutyState.MISSED) {
            String words = duty.requirement().activity() + ": not done by " + running.earliestDueOn()
                    + ", the end of the owner's own interval; the longest the rules allow is " + running.dueOn() + ".";
            wants.add(new Want(
                    key, running.from(), Urgency.PLAN, running.earliestDueOn(), words, Source.PROGRAMME, true));
        }
    }
}
