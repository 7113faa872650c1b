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
 * @param partOf the upload of the whole file, when this is one of its surveys
 * @param part which of them, counted from 1
 * @param repairs steps by which the survey was put right, those taken back too
 * @param parts of a file of several surveys: one each
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
        @Nullable UUID partOf,
        @Nullable Integer part,
        List<RemarkView> remarks,
        List<RepairView> repairs,
        List<UploadView> parts) {

    public UploadView {
        remarks = List.copyOf(remarks);
        repairs = List.copyOf(repairs);
        parts = List.copyOf(parts);
    }

    @Nullable
    Correction correction() {
        return supersedes == null || supersedesReason == null ? null : new Correction(supersedes, supersedesReason);
    }

    /** With the gravest of its remarks only, as lists show it. */
    UploadView headed(List<RemarkView> headline) {
        return with(0, 0, headline, List.of(), List.of());
    }

    UploadView with(
            int jarsStored,
            int linksStored,
            List<RemarkView> remarksMade,
            List<RepairView> repairsMade,
            List<UploadView> partsOfIt) {
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
                partOf,
                part,
                remarksMade,
                repairsMade,
                partsOfIt);
    }
}
