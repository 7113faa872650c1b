package org.ohmstead.worklist;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.model.Evidence;
import org.ohmstead.worklist.model.WorkEvent;
import org.ohmstead.worklist.model.WorkState;

/**
 * Something that happened to an item, and how it stood after that.
 *
 * @param on in the site's calendar
 * @param by username, or the service's own name
 * @param day that it is about: planned for, done on, quiet until
 */
public record WorkEventView(
        Instant at,
        LocalDate on,
        String by,
        boolean byService,
        WorkEvent.Kind kind,
        @Nullable LocalDate day,
        String note,
        @Nullable Evidence evidence,
        WorkState state,
        Urgency urgency,
        @Nullable LocalDate asksBy,
        String reason,
        String assignee) {}
