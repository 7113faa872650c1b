package org.ohmstead.worklist.model;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/**
 * Work that is asked for as things stand.
 *
 * @param since when that jar sits there, that joint is as it is, or that duty's span counts; null for strings
 * @param by the last day that is still in time
 * @param raises false when an open item goes on being asked for, but none is raised for it
 */
public record Want(
        WorkKey key,
        @Nullable LocalDate since,
        Urgency urgency,
        LocalDate by,
        String reason,
        Source source,
        boolean raises) {

    public Want {
        if (urgency == Urgency.CLEAR) {
            throw new IllegalArgumentException("What is clear asks for no work");
        }
    }

    Want with(Want other) {
        return new Want(
                key,
                since,
                urgency.or(other.urgency),
                by.isBefore(other.by) ? by : other.by,
                reason.contains(other.reason) ? reason : reason + " " + other.reason,
                source.or(other.source),
                raises || other.raises);
    }

    Want kept() {
        return new Want(key, since, urgency, by, reason, source, false);
    }
}
