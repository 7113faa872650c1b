package org.ohmstead.worklist;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkKind;

/**
 * Work that a person asks for.
 *
 * @param unit position of a jar, ordinal of a link; null for the string
 * @param by null when no day matters
 */
public record NewWork(
        long stringId,
        WorkKind kind,
        Subject.Kind subject,
        @Nullable Integer unit,
        Urgency urgency,
        @Nullable LocalDate by,
        String reason) {}
