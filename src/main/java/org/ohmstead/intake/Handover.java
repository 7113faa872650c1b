package org.ohmstead.intake;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A file as it is handed in.
 *
 * @param id named by the client, so that a repeated request is recognised
 * @param claimedStringId the string the client says it belongs to, if it does
 * @param correction the survey it corrects, if it does
 */
public record Handover(
        UUID id,
        String fileName,
        byte[] bytes,
        @Nullable Long claimedStringId,
        @Nullable Correction correction) {

    private static final int LONGEST_NAME = 200;

    public Handover {
        fileName = lastStep(fileName);
    }

    /** A file that corrects nothing. */
    public Handover(UUID id, String fileName, byte[] bytes, @Nullable Long claimedStringId) {
        this(id, fileName, bytes, claimedStringId, null);
    }

    Handover correcting(Correction corrected) {
        return new Handover(id, fileName, bytes, claimedStringId, corrected);
    }

    Handover claiming(long stringId) {
        return new Handover(id, fileName, bytes, stringId, correction);
    }

    /** Without folders and without characters that no file name has. */
    private static String lastStep(String name) {
        String last = name.substring(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
        String clean = last.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\"]", "").strip();
        return clean.isEmpty() ? "survey" : clean.substring(0, Math.min(clean.length(), LONGEST_NAME));
    }
}
