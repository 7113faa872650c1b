package org.ohmstead.onsite;

/** Between which posts the probes of a link go. */
final class LinkWords {

    private LinkWords() {}

    static String between(int ordinal, int positions) {
        if (ordinal == 0) {
            return "positive post of 1 to the load cable's lug, on the posts";
        }
        return ordinal == positions
                ? "negative post of " + positions + " to the load cable's lug, on the posts"
                : "negative post of " + ordinal + " to positive post of " + (ordinal + 1) + ", on the posts";
    }
}
