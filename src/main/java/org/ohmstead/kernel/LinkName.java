package org.ohmstead.kernel;

/** How people call a link: by the two positions it joins. */
public final class LinkName {

    private LinkName() {}

    /**
     * "8|9", "+|1".
     *
     * @param ordinal 0 is the positive terminal link, k lies between positions k and k+1, N is the negative terminal link
     * @param positions N
     */
    public static String shortly(int ordinal, int positions) {
        if (ordinal == 0) {
            return "+|1";
        }
        return ordinal == positions ? positions + "|−" : ordinal + "|" + (ordinal + 1);
    }

    /** "link 8|9", "positive terminal link". */
    public static String of(int ordinal, int positions) {
        if (ordinal == 0) {
            return "positive terminal link";
        }
        return ordinal == positions ? "negative terminal link" : "link " + shortly(ordinal, positions);
    }
}
