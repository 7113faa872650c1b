package org.ohmstead.kernel;

/**
 * The cable of a cabled link.
 *
 * @param size cross-section in mm² ("95") or American gauge ("2/0 AWG", "250 kcmil")
 * @param flexibility which column of the conductor table applies; ignored for American gauges
 * @param lengthMetres length of one conductor
 * @param inParallel how many such conductors lie side by side
 */
public record Conductor(String size, Flexibility flexibility, double lengthMetres, int inParallel) {

    /** Conductor classes of IEC 60228: stranded and flexible. */
    public enum Flexibility {
        CLASS_2,
        CLASS_5
    }

    public Conductor {
        if (!(lengthMetres > 0)) {
            throw new IllegalArgumentException("A cable's length must be positive, not " + lengthMetres + " m");
        }
        if (inParallel < 1) {
            throw new IllegalArgumentException("At least one conductor makes a cable, not " + inParallel);
        }
    }
}
