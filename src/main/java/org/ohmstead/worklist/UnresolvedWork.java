package org.ohmstead.worklist;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.model.WorkKind;
import org.ohmstead.worklist.model.WorkState;

/**
 * An item that was open at the end of a day, as it stood then, with the evidence of effort.
 *
 * @param what the subject as people say it
 * @param effort what had happened to it by then, oldest first
 */
public record UnresolvedWork(
        long id,
        long stringId,
        String areaCode,
        String siteCode,
        String stringName,
        WorkKind kind,
        String what,
        LocalDate raisedOn,
        WorkState state,
        Urgency urgency,
        @Nullable LocalDate by,
        String reason,
        String assignee,
        List<WorkEventView> effort) {

    public UnresolvedWork {
        effort = List.copyOf(effort);
    }

    /** The work in a few words: "Remake link 8|9". */
    public String title() {
        return kind.title(what);
    }

    /** "FEL-03 / A". */
    public String string() {
        return siteCode + " / " + stringName;
    }
}
