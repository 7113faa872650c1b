package org.ohmstead.intake;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * An upload and what became of it.
 *
 * @param sha256 fingerprint of the bytes, 64 hex digits
 * @param string "FEL-03 / B", null while it is not known
 * @param jars how many jar readings were stored
 * @param links how many link readings were stored
 * @param supersedes the survey whose place its survey is to take, or took
 */
public record UploadView(
        UUID id,
        String fileName,
        String sha256,
        long byteCount,
        Instant receivedAt,
        String receivedBy,
        UploadState state,
        Stage stage,
        @Nullable Long stringId,
        @Nullable String string,
        @Nullable Long surveyId,
        int jars,
        int links,
        @Nullable Instant settledAt,
        @Nullable String settledBy,
        @Nullable String settledReason,
        @Nullable Long supersedes,
        @Nullable String supersedesReason,
        List<RemarkView> remarks) {

    public UploadView {
        remarks = List.copyOf(remarks);
    }

    @Nullable
    Correction correction() {
        return supersedes == null || supersedesReason == null ? null : new Correction(supersedes, supersedesReason);
    }

    UploadView with(int jarsStored, int linksStored, List<RemarkView> remarksMade) {
        return new UploadView(
                id,
                fileName,
                sha256,
                byteCount,
                receivedAt,
                receivedBy,
                state,
                stage,
                stringId,
                string,
                surveyId,
                jarsStored,
                linksStored,
                settledAt,
                settledBy,
                settledReason,
                supersedes,
                supersedesReason,
                remarksMade);
    }
}
