package org.ohmstead.assessment;

import java.time.LocalDate;
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
        return new StringStanding(stringId, asked.urgency(), asked.headline(urgency, headline), asOf, recheckBy);
    }
}
