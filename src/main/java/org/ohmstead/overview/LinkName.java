package org.ohmstead.overview;

/** How people call a link: by the two positions it joins. */
final class LinkName {

    private LinkName() {}

    static String shortly(int ordinal, int positions) {
        if (ordinal == 0) {
            return "+|1";
        }
        return ordinal == positions ? positions + "|−" : ordinal + "|" + (ordinal + 1);
    }

    static String of(int ordinal, int positions) {
        if (ordinal == 0) {
            return "positive terminal link";
        }
        return ordinal == positions ? "negative terminal link" : "link " + shortly(ordinal, positions);
    }
}
