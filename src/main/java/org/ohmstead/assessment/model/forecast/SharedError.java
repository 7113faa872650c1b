package org.ohmstead.assessment.model.forecast;

import java.util.List;

/**
 * What other strings read on the same day tell about the error of this survey's instrument, logarithmic.
 *
 * @param mean expected error; 0.03 means that all readings are 3 % high
 * @param variance how uncertain that is, besides the error that is the survey's own
 * @param known false when no other string tells anything: then the survey's whole error is its own
 */
public record SharedError(double mean, double variance, boolean known) {
    /** Nothing is known. */
    public static final SharedError UNKNOWN = new SharedError(0, 0, false);

    /**
     * From the surveys of other strings, read on the same day with the same instrument. Strings that age alike are
     * expected alike wrongly, so part of their expectations' variance does not average out.
     *
     * @param before what earlier days tell of the instrument; known when it was met before
     */
    static SharedError from(List<SurveyInnovation> others, SharedError before, ForecastParameters parameters) {
        SharedError seen = seen(others, parameters);
        if (!seen.known()) {
            return before.known() ? before : UNKNOWN;
        }
        double gain = before.variance() / (before.variance() + seen.variance());
        double mean = before.mean() + gain * (seen.mean() - before.mean());
        return new SharedError(mean, before.variance() * (1 - gain), true);
    }

    /** Weighted mean of what the surveys say alone, with its variance. */
    static SharedError seen(List<SurveyInnovation> surveys, ForecastParameters parameters) {
        double own = square(parameters.surveyOwnDeviation());
        double precision = 0;
        double sum = 0;
        double expectation = 0;
        for (SurveyInnovation survey : surveys) {
            double apart = (1 - parameters.expectationsAlike()) * survey.variance() + own;
            precision += 1 / apart;
            sum += survey.value() / apart;
            expectation += survey.variance() / surveys.size();
        }
        if (precision == 0) {
            return UNKNOWN;
        }
        return new SharedError(sum / precision, 1 / precision + parameters.expectationsAlike() * expectation, true);
    }

    private static double square(double x) {
        return x * x;
    }
}
