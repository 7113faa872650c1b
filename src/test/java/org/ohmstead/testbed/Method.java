package org.ohmstead.testbed;

/** Who competes. */
enum Method {
    OWN_BASELINE("percent over own baseline"),
    STRING_MEDIAN("percent over string median"),
    ROBUST_Z("robust z within the survey"),
    STRAIGHT_LINE("straight line per unit"),
    MEDIAN_POLISH("median polish + Theil-Sen"),
    FILTER("forecast filter"),
    ORACLE("(true rise and rate, no errors)");

    private final String words;

    Method(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
