package org.ohmstead.ledger;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A survey on its way into the ledger.
 *
 * @param uploadId the upload it came with, if it came by upload
 * @param rawSha256 fingerprint of the raw file it was read from, 32 bytes
 */
public record NewSurvey(
        SurveyFacts facts, Readings readings, @Nullable UUID uploadId, byte @Nullable [] rawSha256) {

    /** A survey that came neither by upload nor from a kept file. */
    public static NewSurvey of(SurveyFacts facts, Readings readings) {
        return new NewSurvey(facts, readings, null, null);
    }
}
