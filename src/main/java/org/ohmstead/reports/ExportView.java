package org.ohmstead.reports;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A file that somebody asked for, and how far it is.
 *
 * @param report its title
 * @param step what it is at, in words
 * @param fileName null until it is done
 * @param problem what went wrong; null unless it failed
 */
public record ExportView(
        UUID id,
        String report,
        String form,
        State state,
        int doneSteps,
        int allSteps,
        String step,
        Instant askedAt,
        @Nullable Instant endedAt,
        @Nullable String fileName,
        @Nullable String sha256,
        @Nullable String problem) {

    public enum State {
        ASKED("waiting for its turn"),
        RUNNING("being made"),
        DONE("ready"),
        FAILED("failed");

        private final String words;

        State(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public boolean isUnderWay() {
        return state == State.ASKED || state == State.RUNNING;
    }
}
