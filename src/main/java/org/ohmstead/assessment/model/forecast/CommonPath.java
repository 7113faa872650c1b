package org.ohmstead.assessment.model.forecast;

/** How the common rise goes on, at a fixed row of horizons; worked out once per string and used for every unit. */
final class CommonPath {
    /** Years ahead at which the chance of crossing is worked out. */
    static final double[] HORIZONS = {0, 1 / 12.0, .25, .5, .75, 1, 1.5, 2, 3, 4, 6, 8, 11, 15};

    private final GroupState group;
    private final ForecastParameters parameters;
    private final double[] mean;
    private final double[] variance;
    private final double[] staying;

    private CommonPath(GroupState group, ForecastParameters parameters, int count) {
        this.group = group;
        this.parameters = parameters;
        this.mean = new double[count];
        this.variance = new double[count];
        this.staying = new double[count];
        for (int k = 0; k < count; k++) {
            Gaussian ahead = group.common.state.copy();
            CommonState.flow(ahead, HORIZONS[k], group.constants.commonNoise());
            mean[k] = ahead.mean[CommonState.RISE];
            staying[k] = Math.exp(-group.constants.turnRate() * HORIZONS[k]);
            variance[k] = ahead.cov(CommonState.RISE, CommonState.RISE);
        }
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

    double mean(UnitState unit, int horizon) {
        return share(unit, horizon) * mean[horizon];
    }

    double variance(UnitState unit, int horizon) {
        double share = share(unit, horizon);
        return share * share * variance[horizon];
    }

    /** Chance that a healthy unit has not turned by then. */
    double staying(int horizon) {
        return staying[horizon];
    }

    private double share(UnitState unit, int horizon) {
        return group.share(unit, group.clockYears + HORIZONS[horizon], parameters.shareExponent());
    }
}
