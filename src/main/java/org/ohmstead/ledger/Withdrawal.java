package org.ohmstead.ledger;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Why a survey no longer counts.
 *
 * @param supersededBy the survey that took its place, when it was superseded
 * @param by username
 */
public record Withdrawal(Kind kind, @Nullable Long supersededBy, Instant at, String by, String reason) {

    public enum Kind {
        /** Accepted by mistake. */
        VOIDED,
        /** A corrected survey took its place. */
        SUPERSEDED
    }
}
