package org.ohmstead.assessment;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/** How a string stands, in a line. */
public record StringStanding(
        long stringId,
        Urgency urgency,
        String headline,
        LocalDate asOf,
        @Nullable LocalDate recheckBy) {}
