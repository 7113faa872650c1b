package org.ohmstead.programme.rules;

/** How a duty stands against a due day. */
public enum DutyState {
    DUE("due"),
    ON_TIME("on time"),
    LATE("late"),
    MISSED("missed"),
    WAIVED("waived"),
    MONITORED("monitored");

    private final String words;

    DutyState(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Neither done nor excused: somebody must go. */
    public boolean isOpen() {
        return this == DUE || this == MISSED;
    }
}
