package org.ohmstead.kernel;

/**
 * What kind of ohmic value an instrument gives. The three are not convertible into each other; each is trended on its
 * own.
 */
public enum OhmicKind {
    IMPEDANCE("impedance", "mΩ"),
    RESISTANCE("resistance", "mΩ"),
    CONDUCTANCE("conductance", "S");

    private final String words;
    private final String unit;

    OhmicKind(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    public String words() {
        return words;
    }

    /** The unit in which values of this kind are kept and shown: milliohms, or siemens for conductance. */
    public String unit() {
        return unit;
    }

    /** Whether ageing makes the value rise; conductance falls. */
    public boolean risesWithAge() {
        return this != CONDUCTANCE;
    }
}
