package org.ohmstead.assessment.model.estate;

import java.time.LocalDate;
import java.util.List;

/**
 * By how much an instrument reads off, relative: 0.03 is 3 % high. A matter of doubt to be looked into, never applied to
 * readings.
 *
 * @param low of the 95 % interval
 * @param high of the 95 % interval
 * @param since first day from which it reads like that
 * @param evidence the surveys that tell so: the first of each string since that day
 * @param days on which they were taken
 */
public record InstrumentOff(
        double offset, double low, double high, LocalDate since, List<SurveyError> evidence, int days) {

    public InstrumentOff {
        evidence = List.copyOf(evidence);
    }

    public boolean isOff(double threshold) {
        return isOff(offset, low, high, threshold);
    }

    /** The rule: off by that share or more, and the interval leaves zero out. */
    public static boolean isOff(double offset, double low, double high, double threshold) {
        return Math.abs(offset) >= threshold && (low > 0 || high < 0);
    }
}
