package org.ohmstead.assessment.model.estate;

import java.time.LocalDate;

/**
 * How far a survey's jars lay, all together, from what the string's own history made expect.
 *
 * @param instrument serial number of the test set
 * @param error logarithmic: 0.03 is 3 % more than expected; NaN when nothing was read or expected
 * @param variance of what was expected
 */
public record SurveyError(
        long surveyId, long stringId, LocalDate on, String instrument, double error, double variance) {

    boolean tells() {
        return Double.isFinite(error) && Double.isFinite(variance);
    }
}
