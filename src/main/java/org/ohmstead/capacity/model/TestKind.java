package org.ohmstead.capacity.model;

/** What a discharge test was made for. */
public enum TestKind {
    ACCEPTANCE("acceptance test"),
    PERFORMANCE("performance test"),
    MODIFIED_PERFORMANCE("modified performance test"),
    SERVICE("service test");

    private final String words;

    TestKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** A service test shows that the string carries its duty, which is not its capacity. */
    public boolean showsCapacity() {
        return this != SERVICE;
    }
}
