package org.ohmstead.capacity.model;

/** How the temperature of the electrolyte is taken into account. */
public enum Method {
    RATE_ADJUSTED("rate-adjusted"),
    LINEAR("linear");

    private final String words;

    Method(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
