package org.ohmstead.assessment.model.forecast;

import org.ohmstead.assessment.model.SurveyReadings;

/** Takes one survey after the other into a state of its own, so that nothing is copied from survey to survey. */
public final class Follower {
    private final Forecaster forecaster;
    private ForecastState state;

    /** @param from stays as it is */
    public Follower(Forecaster forecaster, ForecastState from) {
        this.forecaster = forecaster;
        this.state = from.copy();
    }

    /** @return how far the jars' centre lay from what was expected */
    public SurveyInnovation take(SurveyReadings survey) {
        Forecaster.Step step = forecaster.step(state, survey, SharedError.UNKNOWN);
        state = step.after();
        return step.innovation();
    }

    /** After the surveys so far; later ones don't change it. */
    public ForecastState state() {
        return state.copy();
    }
}
