package org.ohmstead.programme;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One thing that was decided for a string's programme.
 *
 * @param from counts from this day on
 * @param requirement its code; empty for a pack
 * @param detail the pack, the branch, the months (empty: none of their own), or the waiver's reason
 * @param until a waiver's last day
 * @param endedOn the day from which a waiver was ended early
 * @param waiverId null for what is no waiver
 */
public record Decision(
        Kind kind,
        LocalDate from,
        String requirement,
        String detail,
        @Nullable LocalDate until,
        @Nullable LocalDate endedOn,
        @Nullable Long waiverId,
        Instant setAt,
        String setBy) {

    public enum Kind {
        PACK("under the pack"),
        ELECTION("met by"),
        OWN_INTERVAL("own interval"),
        WAIVER("waived");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** A waiver that still excuses something on that day. */
    public boolean canEnd(LocalDate today) {
        return until != null && endedOn == null && !until.isBefore(today);
    }
}
