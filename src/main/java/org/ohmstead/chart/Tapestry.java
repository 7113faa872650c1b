package org.ohmstead.chart;

import java.time.LocalDate;
import java.util.List;

/**
 * Every jar at every survey.
 *
 * @param takenOn one date per survey, oldest first
 * @param change survey by position (index 0 is position 1): relative to the baseline of the jar that sat there, positive
 *     in the direction of ageing; NaN when not measured
 * @param replaced survey by position: whether another jar sat there at the survey before
 */
public record Tapestry(List<LocalDate> takenOn, double[][] change, boolean[][] replaced) {

    public Tapestry {
        takenOn = List.copyOf(takenOn);
        if (takenOn.size() != change.length || change.length != replaced.length) {
            throw new IllegalArgumentException("A tapestry has one row per survey");
        }
    }

    int jars() {
        return change.length == 0 ? 0 : change[0].length;
    }
}
