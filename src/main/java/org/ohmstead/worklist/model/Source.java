package org.ohmstead.worklist.model;

/** Who or what asked for work. */
public enum Source {
    JUDGEMENT("the judgement"),
    REMARK("a remark on an accepted survey"),
    PROGRAMME("the programme"),
    PERSON("a person");

    private final String words;

    Source(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** The one that is less easily taken back. */
    Source or(Source other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
