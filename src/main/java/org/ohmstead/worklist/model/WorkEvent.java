package org.ohmstead.worklist.model;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Something that happened to an item.
 *
 * @param day that it is about: planned for, done on, quiet until
 * @param evidence the record behind it
 */
public record WorkEvent(
        Kind kind,
        @Nullable LocalDate day,
        String note,
        @Nullable Evidence evidence) {

    /** What happened. */
    public enum Kind {
        RAISED("raised"),
        STILL_ASKED("asked for otherwise"),
        PLANNED("planned"),
        ASSIGNED("assigned"),
        DONE("done"),
        NOT_CURED("not cured"),
        PROVEN("proven"),
        DISMISSED("dismissed"),
        UNDONE("taken back"),
        PROOF_WITHDRAWN("proof withdrawn");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
