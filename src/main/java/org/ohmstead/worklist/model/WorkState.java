package org.ohmstead.worklist.model;

/** How far a work item is. */
public enum WorkState {
    RAISED("raised"),
    PLANNED("planned"),
    DONE("done"),
    PROVEN("proven"),
    DISMISSED("dismissed");

    private final String word;

    WorkState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Somebody still has to do something, if only to read again. */
    public boolean isOpen() {
        return this != PROVEN && this != DISMISSED;
    }

    /** Nobody has reported it done. */
    public boolean isToDo() {
        return this == RAISED || this == PLANNED;
    }
}
