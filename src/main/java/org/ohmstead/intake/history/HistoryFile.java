package org.ohmstead.intake.history;

import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A file of a history and what became of it.
 *
 * @param takenAt as the file itself writes it; null when that is known only to a column map
 * @param uploadId its receipt; null while it waits
 * @param said the gravest remark, empty for none
 */
public record HistoryFile(
        int number,
        String fileName,
        String sha256,
        @Nullable LocalDateTime takenAt,
        FileOutcome outcome,
        @Nullable UUID uploadId,
        @Nullable Long surveyId,
        @Nullable String string,
        String said) {}
