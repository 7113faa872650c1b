package org.ohmstead.intake.check;

/** What a remark does to a survey. Ordered: later constants cost more. */
public enum Severity {
    /** Said for the record. */
    NOTE("Note"),
    /** The survey is stored, but something in it is less sure or less comparable. */
    DOUBT("Doubt"),
    /** The survey waits until a person has accepted or refused it. */
    HOLD("Hold"),
    /** No survey can be made of this file as it stands. */
    REFUSE("Refuse");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
