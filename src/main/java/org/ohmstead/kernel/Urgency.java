package org.ohmstead.kernel;

/** What a judgement asks of people. Ordered: later constants ask more. */
public enum Urgency {
    CLEAR("Clear"),
    RECHECK("Recheck"),
    PLAN("Plan"),
    ACT("Act");

    private final String word;

    Urgency(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** The one that asks more. */
    public Urgency or(Urgency other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
