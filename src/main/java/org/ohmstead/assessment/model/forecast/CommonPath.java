package org.ohmstead.assessment.model.forecast;

/** How the common rise goes on, at a fixed row of horizons; worked out once per string and used for every unit. */
final class CommonPath {
    /** Years ahead at which the chance of crossing is worked out. */
    static final double[] HORIZONS = {0, 1 / 12.0, .25, .5, .75, 1, 1.5, 2, 3, 4, 6, 8, 11, 15};

    /** The first of them, up to the longest interval between visits. */
    static final int VISITED = 8;

    /** Shares of the time ahead at which a unit turns. */
    private static final double[] TURNS_AT = {1 / 6.0, 1 / 2.0, 5 / 6.0};

    private final GroupState group;
    private final ForecastParameters parameters;
    private final double[] mean;
    private final double[] variance;
    private final double[] staying;
    private final double[][] riseOfTurned;
    private final double[][] varianceOfTurned;

    private CommonPath(GroupState group, ForecastParameters parameters, int count) {
        this.group = group;
        this.parameters = parameters;
        this.mean = new double[count];
        this.variance = new double[count];
        this.staying = new double[count];
        this.riseOfTurned = new double[count][TURNS_AT.length];
        this.varianceOfTurned = new double[count][TURNS_AT.length];
        for (int k = 0; k < count; k++) {
            Gaussian ahead = group.common.state.copy();
            CommonState.flow(ahead, HORIZONS[k], group.constants.commonNoise());
            mean[k] = ahead.mean[CommonState.RISE];
            staying[k] = Math.exp(-group.constants.turnRate() * HORIZONS[k]);
            variance[k] = ahead.cov(CommonState.RISE, CommonState.RISE);
            turn(k);
        }
    }

    private void turn(int horizon) {
        double spread = constants().turnedRateSpread();
        for (int turn = 0; turn < TURNS_AT.length; turn++) {
            double since = HORIZONS[horizon] * (1 - TURNS_AT[turn]);
            riseOfTurned[horizon][turn] = since * constants().turnedRate() + gained(since);
            varianceOfTurned[horizon][turn] =
                    since * since * spread * spread + constants().goingNoise() * since * since * since / 3;
        }
    }

    /** What a going unit rises in that time by its growing rate alone. */
    double gained(double years) {
        return constants().goingAcceleration() * years * years / 2;
    }

    /** What a healthy unit will have risen more than if it stayed so, for each of some times at which it may turn. */
    double[] riseOfTurned(int horizon) {
        return riseOfTurned[horizon];
    }

    /** How much more uncertain that makes its rise. */
    double[] varianceOfTurned(int horizon) {
        return varianceOfTurned[horizon];
    }

    static CommonPath of(GroupState group, ForecastParameters parameters) {
        return new CommonPath(group, parameters, HORIZONS.length);
    }

    /** Only as things stand now. */
    static CommonPath now(GroupState group, ForecastParameters parameters) {
        return new CommonPath(group, parameters, 1);
    }

    UnitConstants constants() {
        return group.constants;
    }

    /** Factor on the variance of crossing dates; links' dates hold well enough without. */
    double widening() {
        return group.constants.startsGoing() > 0 ? 1 : parameters.intervalWidening();
    }

    /** Of the common rise. */
    double mean(int horizon) {
        return mean[horizon];
    }

    /** Of the common rise. */
    double variance(int horizon) {
        return variance[horizon];
    }

    /** Chance that a healthy unit has not turned by then. */
    double staying(int horizon) {
        return staying[horizon];
    }

    /** The unit's part in the common rise. */
    double share(UnitState unit, int horizon) {
        return group.share(unit, group.clockYears + HORIZONS[horizon], parameters.shareExponent());
    }
}
