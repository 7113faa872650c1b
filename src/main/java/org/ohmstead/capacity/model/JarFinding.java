package org.ohmstead.capacity.model;

/** What a capacity test says of a single jar. */
public enum JarFinding {
    SOUND("carried its share"),
    WEAK("weak"),
    REVERSED("reversed"),
    UNDECIDED("not decided"),
    UNREAD("not read");

    private final String words;

    JarFinding(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    public boolean isFailed() {
        return this == WEAK || this == REVERSED;
    }
}
