package org.ohmstead.intake;

/** What became of an upload. */
public enum UploadState {
    ACCEPTED("Accepted"),
    HELD("Held"),
    REFUSED("Refused"),
    /** A file of several surveys; each part has a state of its own. */
    IN_PARTS("In parts");

    private final String word;

    UploadState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
