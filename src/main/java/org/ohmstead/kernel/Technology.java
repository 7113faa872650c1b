package org.ohmstead.kernel;

/** What a jar is made of; decides float voltage, compensation, and which ohmic evidence counts. */
public enum Technology {
    VENTED_LEAD_ACID("vented lead-acid"),
    AGM("valve-regulated lead-acid, AGM"),
    GEL("valve-regulated lead-acid, gel"),
    NICKEL_CADMIUM("nickel-cadmium");

    private final String words;

    Technology(String words) {
        this.words = words;
    }

    /** How people write it, in lower case. */
    public String words() {
        return words;
    }

    public boolean isLeadAcid() {
        return this != NICKEL_CADMIUM;
    }

    public boolean isValveRegulated() {
        return this == AGM || this == GEL;
    }
}
