package org.ohmstead.intake.history;

/** What became of a file of a history. */
public enum FileOutcome {
    WAITING("Waiting"),
    ACCEPTED("Accepted"),
    HELD("Held"),
    REFUSED("Refused"),
    IN_PARTS("In parts"),
    /** The service itself could not work through it. */
    FAILED("Failed");

    private final String word;

    FileOutcome(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
