package org.ohmstead.programme;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.rules.NextDate.Governs;

/** When a string is to be visited next, and why; see {@link org.ohmstead.programme.rules.NextDate}. */
public record NextDateView(
        long stringId,
        LocalDate dueOn,
        Governs governs,
        String reason,
        LocalDate intervalDueOn,
        @Nullable LocalDate recheckBy,
        @Nullable LocalDate dutyDueOn,
        @Nullable LocalDate riskOn,
        @Nullable LocalDate demandedBy) {}
