package org.ohmstead.reports;

/** How far the making of a file has come. */
interface Progress {

    /** For files that nobody waits for. */
    Progress UNSEEN = (step, done, all) -> {};

    /**
     * @param step what is done next, in words
     * @param done steps of {@code all} that are behind
     */
    void at(String step, int done, int all);
}
