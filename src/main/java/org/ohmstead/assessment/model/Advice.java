package org.ohmstead.assessment.model;

/**
 * What to do about a string, with the rule that says so.
 *
 * @param rule when this is advised, in words
 * @param words what is advised, and why here
 */
public record Advice(Kind kind, String rule, String words) {

    /** In the order in which it should be done. */
    public enum Kind {
        MEASURE_AGAIN,
        REMAKE_LINKS,
        REPLACE_JARS,
        ADJUST_CHARGER,
        TEST_CAPACITY,
        RENEW_STRING
    }
}
