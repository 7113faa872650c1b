package org.ohmstead.worklist;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * When it is to be done, and by whom; one of the three at least.
 *
 * @param on the round's day where only the round is given
 * @param assignee empty while nobody is named
 */
public record WorkPlan(@Nullable LocalDate on, @Nullable Long roundId, String assignee, String note) {}
