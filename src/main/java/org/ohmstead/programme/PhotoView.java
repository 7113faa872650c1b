package org.ohmstead.programme;

import java.time.Instant;

/** A kept photograph of a visit, without its bytes. */
public record PhotoView(
        long id,
        long visitId,
        String fileName,
        String mediaType,
        int sizeBytes,
        Instant recordedAt,
        String recordedBy) {

    /** Where its bytes are served. */
    public String address() {
        return "/visits/" + visitId + "/photos/" + id;
    }

    /** Not the sender's name: nothing of his goes into a header. */
    public String safeName() {
        return "visit-" + visitId + "-photo-" + id + "." + mediaType.substring("image/".length());
    }
}
