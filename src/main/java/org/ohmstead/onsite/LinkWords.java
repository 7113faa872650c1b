package org.ohmstead.onsite;

/** How people call a link, and between which posts its probes go. */
final class LinkWords {

    private LinkWords() {}

    static String name(int ordinal, int positions) {
        if (ordinal == 0) {
            return "positive terminal link";
        }
        return ordinal == positions ? "negative terminal link" : "link " + ordinal + "|" + (ordinal + 1);
    }

    static String between(int ordinal, int positions) {
        if (ordinal == 0) {
            return "positive post of 1 to the load cable's lug, on the posts";
        }
        return ordinal == positions
                ? "negative post of " + positions + " to the load cable's lug, on the posts"
                : "negative post of " + ordinal + " to positive post of " + (ordinal + 1) + ", on the posts";
    }
}
