package org.ohmstead.programme.rules;

/** How a rule came into a pack. */
public enum Provenance {
    READ("read in the named source"),
    REPORTED("read in a secondary source, verify against your edition"),
    RECALLED("recalled, verify against your edition");

    private final String words;

    Provenance(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
