package org.ohmstead.worklist;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.model.Evidence;
import org.ohmstead.worklist.model.Source;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkKind;
import org.ohmstead.worklist.model.WorkState;

/**
 * An item of the work list.
 *
 * @param subject what it is about
 * @param unit position of a jar, ordinal of a link
 * @param requirement code of a duty's requirement
 * @param what the subject as people say it: "jar 7", "link 8|9"
 * @param since when that jar sits there, that joint is as it is, or that duty's span counts
 * @param by the last day in time; null when a person named none
 * @param overdue open although that day has passed at the site
 * @param askedSurvey the survey that asked last
 * @param askedOn its day
 * @param assignee empty while nobody is named
 * @param proof the record that shows that it helped
 * @param quietUntil a person's dismissal holds so long
 */
public record WorkItemView(
        long id,
        long stringId,
        String areaCode,
        String siteCode,
        String stringName,
        WorkKind kind,
        Subject.Kind subject,
        @Nullable Integer unit,
        @Nullable String requirement,
        String what,
        @Nullable LocalDate since,
        WorkState state,
        Urgency urgency,
        @Nullable LocalDate by,
        boolean overdue,
        String reason,
        Source source,
        LocalDate raisedOn,
        Instant raisedAt,
        Instant changedAt,
        @Nullable Long askedSurvey,
        @Nullable LocalDate askedOn,
        String assignee,
        @Nullable LocalDate plannedOn,
        @Nullable Long roundId,
        @Nullable LocalDate doneOn,
        @Nullable String doneBy,
        @Nullable String doneNote,
        @Nullable Evidence proof,
        @Nullable String closedReason,
        boolean closedByService,
        @Nullable LocalDate quietUntil) {

    /** "FEL-03 / A". */
    public String string() {
        return siteCode + " / " + stringName;
    }

    /** The work in a few words: "Remake link 8|9". */
    public String title() {
        return kind.title(what);
    }

    public boolean isOpen() {
        return state.isOpen();
    }
}
