package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;

/**
 * When the string should be measured again by risk alone.
 *
 * @param governs what decided
 * @param link whether the governing unit is a link
 * @param unit the unit that adds most to the risk until then, or whose reading is pending; −1 when none stands out
 */
public record NextVisit(LocalDate on, Governs governs, boolean link, int unit) {
    /** What decided the date. */
    public enum Governs {
        /** The risk that builds up among units not flagged yet. */
        RISK,
        /** A reading set aside must be read again. */
        PENDING_READING,
        /** Nothing asks for an earlier date than the longest interval. */
        LONGEST_INTERVAL
    }
}
