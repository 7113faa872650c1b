package org.ohmstead.assessment;

import java.time.LocalDate;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/**
 * How a string stands, in a line.
 *
 * @param urgency what it asks, with what people overruled
 */
public record StringStanding(
        long stringId,
        Urgency urgency,
        String headline,
        LocalDate asOf,
        @Nullable LocalDate recheckBy) {

    StringStanding heard(@Nullable Asked asked) {
        if (asked == null) {
            return this;
        }
        String words = asked.ofString()
                .map(one -> "Overruled until " + one.lastDay() + " (the engine says " + urgency.word() + "): "
                        + one.reason())
                .orElseGet(() -> headline + " Overruled in part: "
                        + asked.inForce().stream()
                                .map(one -> one.subject().name().toLowerCase(Locale.ROOT) + " " + one.unit())
                                .collect(Collectors.joining(", "))
                        + ".");
        return new StringStanding(stringId, asked.urgency(), words, asOf, recheckBy);
    }
}
