package org.ohmstead.ledger;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A survey as the ledger keeps it.
 *
 * @param recordedBy username
 * @param rawSha256 fingerprint of the raw file, 32 bytes
 * @param withdrawal null while the survey stands
 */
public record SurveyRecord(
        long id,
        SurveyFacts facts,
        Readings readings,
        Instant recordedAt,
        String recordedBy,
        @Nullable UUID uploadId,
        byte @Nullable [] rawSha256,
        @Nullable Withdrawal withdrawal) {

    public boolean stands() {
        return withdrawal == null;
    }
}
