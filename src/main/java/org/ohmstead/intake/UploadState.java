package org.ohmstead.intake;

/** What became of an upload. */
public enum UploadState {
    ACCEPTED("Accepted"),
    HELD("Held"),
    REFUSED("Refused");

    private final String word;

    UploadState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
