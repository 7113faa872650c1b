package org.ohmstead.assessment.model.forecast;

/** What all units of a string share: rise since new, its rate and acceleration, and the level when new. */
final class CommonState {
    static final int RISE = Gaussian.LEVEL;
    static final int RATE = Gaussian.RATE;
    static final int ACCELERATION = 2;
    static final int LEVEL = 3;
    private static final double UNKNOWN = 4;

    final UnitConstants constants;
    Gaussian state = new Gaussian(4);
    /** Variance of the error that a whole survey shares, learned. */
    double surveyVariance;

    CommonState(UnitConstants constants) {
        this.constants = constants;
        this.surveyVariance = square(constants.surveyNoise());
    }

    /**
     * As new.
     *
     * @param pace how many times faster than the reference life this type ages
     * @param referenceLevel logarithm of the value when new, NaN when unknown
     */
    void restart(double pace, double referenceLevel, double referenceSpread) {
        state.set(RISE, 0, 0);
        state.set(RATE, constants.commonRate() * pace, square(constants.commonRateSpread()));
        state.set(
                ACCELERATION,
                constants.commonAcceleration() * pace * pace,
                square(constants.commonAccelerationSpread()));
        setLevel(referenceLevel, referenceSpread);
    }

    private void setLevel(double referenceLevel, double referenceSpread) {
        boolean known = Double.isFinite(referenceLevel);
        state.set(LEVEL, known ? referenceLevel : 0, known ? square(referenceSpread) : UNKNOWN);
    }

    /** An unknown level is first set to what is read, so that its wide prior does not lean on zero. */
    void centreUnknownLevel(double centre) {
        if (state.cov(LEVEL, LEVEL) >= UNKNOWN) {
            state.mean[LEVEL] = centre - state.mean[RISE];
        }
    }

    /** Another instrument reads another level. */
    void changeInstrument(double spread) {
        state.addVariance(LEVEL, square(spread));
    }

    void predict(double years) {
        if (years > 0) {
            flow(state, years, constants.commonNoise());
        }
    }

    static void flow(Gaussian state, double years, double noise) {
        state.addMultiple(RISE, years, RATE);
        state.addMultiple(RISE, years * years / 2, ACCELERATION);
        state.addMultiple(RATE, years, ACCELERATION);
        state.addIntegratedNoise(noise, years);
    }

    double expected() {
        return state.sum(RISE, LEVEL);
    }

    double expectedVariance() {
        return state.sumVariance(RISE, LEVEL);
    }

    double rise() {
        return state.mean[RISE];
    }

    /**
     * Takes in the centre of a survey.
     *
     * @param centreVariance of the centre alone
     * @param shared what is known of the instrument's error
     */
    void observe(double centre, double centreVariance, SharedError shared, ForecastParameters parameters) {
        double ofSurvey = shared.known() ? shared.variance() + surveyVariance * ownShare(parameters) : surveyVariance;
        double innovation = centre - shared.mean() - expected();
        double own = expectedVariance() + centreVariance;
        double allowed = square(parameters.inflateBeyond()) * (own + ofSurvey);
        double doubt = Math.max(0, square(innovation) - allowed) / square(parameters.inflateBeyond());
        state.observeSum(RISE, LEVEL, centre - shared.mean(), centreVariance + ofSurvey + doubt);
        learn(Math.min(square(innovation), allowed), own, ofSurvey);
    }

    /** How much of a survey's error is left when the instrument's is known. */
    private double ownShare(ForecastParameters parameters) {
        return Math.min(1, square(parameters.surveyOwnDeviation() / constants.surveyNoise()));
    }

    /** Slowly, and only as far as the innovation is the survey's own doing. */
    private void learn(double squaredInnovation, double otherVariance, double ofSurvey) {
        double share = ofSurvey / (ofSurvey + otherVariance);
        double excess = share * (squaredInnovation - otherVariance - ofSurvey) / ofSurvey;
        double start = square(constants.surveyNoise());
        double learned = surveyVariance * (1 + .08 * share * excess);
        surveyVariance = Math.min(4 * start, Math.max(.1 * start, learned));
    }

    CommonState copy() {
        CommonState copy = new CommonState(constants);
        copy.state = state.copy();
        copy.surveyVariance = surveyVariance;
        return copy;
    }

    void write(DoubleTape tape) {
        state.write(tape);
        tape.put(surveyVariance);
    }

    static CommonState read(DoubleTape tape, UnitConstants constants) {
        CommonState common = new CommonState(constants);
        common.state = Gaussian.read(tape, 4);
        common.surveyVariance = tape.take();
        return common;
    }

    private static double square(double x) {
        return x * x;
    }
}
