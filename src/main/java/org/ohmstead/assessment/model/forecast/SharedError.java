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
     */
    static SharedError from(List<SurveyInnovation> others, ForecastParameters parameters) {
        double own = square(parameters.surveyOwnDeviation());
        double prior = square(parameters.instrumentDayDeviation());
        double precision = 0;
        double sum = 0;
        double expectation = 0;
        for (SurveyInnovation other : others) {
            double apart = (1 - parameters.expectationsAlike()) * other.variance() + own;
            precision += 1 / apart;
            sum += other.value() / apart;
            expectation += other.variance() / others.size();
        }
        if (precision == 0) {
            return UNKNOWN;
        }
        double ofMean = 1 / precision + parameters.expectationsAlike() * expectation;
        double gain = prior / (prior + ofMean);
        return new SharedError(gain * sum / precision, prior * (1 - gain), true);
    }

    private static double square(double x) {
        return x * x;
    }
}
