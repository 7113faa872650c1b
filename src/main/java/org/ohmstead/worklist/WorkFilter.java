package org.ohmstead.worklist;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.model.WorkKind;
import org.ohmstead.worklist.model.WorkState;

/**
 * Which items are asked for; what is empty or null leaves nothing out.
 *
 * @param area code
 * @param site code
 * @param overdue only open ones whose day has passed at the site
 * @param assignee as it was written, capitals apart
 */
public record WorkFilter(
        Set<WorkState> states,
        @Nullable String area,
        @Nullable String site,
        @Nullable Long stringId,
        Set<WorkKind> kinds,
        Set<Urgency> urgencies,
        boolean overdue,
        @Nullable String assignee) {

    public static final Set<WorkState> OPEN_STATES = Set.of(WorkState.RAISED, WorkState.PLANNED, WorkState.DONE);

    public static final WorkFilter EVERYTHING =
            new WorkFilter(Set.of(), null, null, null, Set.of(), Set.of(), false, null);

    /** Whatever is not closed. */
    public static final WorkFilter OPEN = EVERYTHING.in(OPEN_STATES);

    public WorkFilter {
        states = Set.copyOf(states);
        kinds = Set.copyOf(kinds);
        urgencies = Set.copyOf(urgencies);
    }

    public WorkFilter in(Set<WorkState> others) {
        return new WorkFilter(others, area, site, stringId, kinds, urgencies, overdue, assignee);
    }

    public WorkFilter late() {
        return new WorkFilter(states, area, site, stringId, kinds, urgencies, true, assignee);
    }

    public WorkFilter at(long string) {
        return new WorkFilter(states, area, site, string, kinds, urgencies, overdue, assignee);
    }

    public WorkFilter ofArea(@Nullable String code) {
        return new WorkFilter(states, code, site, stringId, kinds, urgencies, overdue, assignee);
    }

    public WorkFilter ofSite(@Nullable String code) {
        return new WorkFilter(states, area, code, stringId, kinds, urgencies, overdue, assignee);
    }
}
