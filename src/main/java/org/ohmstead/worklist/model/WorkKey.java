package org.ohmstead.worklist.model;

/** What makes two items of a string the same work: one of them at most is open. */
public record WorkKey(WorkKind kind, Subject subject) {

    public WorkKey {
        if (!kind.suits(subject.kind())) {
            throw new IllegalArgumentException(kind + " is no work on a " + subject.kind());
        }
    }
}
