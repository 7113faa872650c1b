package org.ohmstead.assessment.model.forecast;

/**
 * Chance that a unit's rise over new is beyond its limit at some time ahead: a mixture of staying healthy, turning at one
 * of three times until then, and going already; each part is normal.
 */
final class CrossingCurve {
    private static final double[] TURNS_AT = {1 / 6.0, 1 / 2.0, 5 / 6.0};

    private final UnitState unit;
    private final CommonPath path;
    private final UnitConstants constants;
    private double widening = 1;

    CrossingCurve(UnitState unit, CommonPath path) {
        this.unit = unit;
        this.path = path;
        this.constants = path.constants();
    }

    /**
     * One value per horizon, never falling.
     *
     * @param limitUncertain true for the chance of failing; false for the dates of crossing the limit itself
     */
    double[] along(boolean limitUncertain) {
        widening = limitUncertain ? 1 : path.widening();
        double[] curve = new double[CommonPath.HORIZONS.length];
        double highest = 0;
        for (int k = 0; k < curve.length; k++) {
            highest = Math.max(highest, beyondLimit(k, limitUncertain));
            curve[k] = highest;
        }
        return curve;
    }

    /** Chance at one horizon alone; asked some thousand times a string, so nothing in it is worked out twice. */
    double beyondLimit(int horizon, boolean limitUncertain) {
        double years = CommonPath.HORIZONS[horizon];
        double room = constants.logLimit() - path.mean(unit, horizon);
        double variance = path.variance(unit, horizon)
                + (limitUncertain ? constants.logLimitSpread() * constants.logLimitSpread() : 0);
        double stays = (1 - unit.goingWeight) * path.staying(horizon);
        double turns = 1 - unit.goingWeight - stays;
        double level = unit.healthy.mean[UnitState.LEVEL] + years * unit.healthy.mean[UnitState.RATE];
        double drifted = drifted(unit.healthy, years, constants.healthyNoise());
        double chance =
                stays * beyond(level - room, variance + drifted) + unit.goingWeight * going(years, room, variance);
        return turns > 0 ? chance + turns * turning(years, level, drifted, room, variance) : chance;
    }

    private double going(double years, double room, double variance) {
        double level = unit.going.mean[UnitState.LEVEL]
                + years * unit.going.mean[UnitState.RATE]
                + constants.goingAcceleration() * years * years / 2;
        return beyond(level - room, variance + drifted(unit.going, years, constants.goingNoise()));
    }

    private double turning(double years, double healthyLevel, double drifted, double room, double variance) {
        double sum = 0;
        for (double part : TURNS_AT) {
            double since = years * (1 - part);
            double level =
                    healthyLevel + since * constants.turnedRate() + constants.goingAcceleration() * since * since / 2;
            double spread = drifted
                    + since * since * constants.turnedRateSpread() * constants.turnedRateSpread()
                    + constants.goingNoise() * since * since * since / 3;
            sum += beyond(level - room, variance + spread);
        }
        return sum / TURNS_AT.length;
    }

    private static double drifted(Gaussian regime, double years, double noise) {
        return regime.cov(UnitState.LEVEL, UnitState.LEVEL)
                + 2 * years * regime.cov(UnitState.LEVEL, UnitState.RATE)
                + years * years * regime.cov(UnitState.RATE, UnitState.RATE)
                + noise * years * years * years / 3;
    }

    private double beyond(double excess, double variance) {
        return variance > 0 ? Normal.cumulative(excess / Math.sqrt(widening * variance)) : excess > 0 ? 1 : 0;
    }

    /** Years ahead at which the curve reaches a share; infinite when it does not within the horizons. */
    static double reaches(double[] curve, double share) {
        double[] years = CommonPath.HORIZONS;
        for (int k = 0; k < curve.length; k++) {
            if (curve[k] >= share) {
                return k == 0
                        ? 0
                        : years[k - 1] + (years[k] - years[k - 1]) * (share - curve[k - 1]) / (curve[k] - curve[k - 1]);
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
