package org.ohmstead.assessment.model.forecast;

/**
 * Chance that a unit's rise over new is beyond its limit at some time ahead: a mixture of staying healthy, turning at one
 * of three times until then, and going already; each part is normal. Worked out for two limits at once: the one at which
 * it fails its purpose, which is uncertain, and the one whose day of crossing is told, which is exact.
 */
final class CrossingCurve {
    /** Beyond so many standard deviations nothing is left: the chance is under 1e-16. */
    private static final double SURE = 8.3;

    private final UnitState unit;
    private final CommonPath path;
    private final UnitConstants constants;
    private double stays;
    private double turns;
    private double healthyExcess;
    private double healthyVariance;
    private double goingExcess;
    private double goingVariance;

    private CrossingCurve(UnitState unit, CommonPath path) {
        this.unit = unit;
        this.path = path;
        this.constants = path.constants();
    }

    /**
     * Both curves, one value per horizon, never falling.
     *
     * @param failing chance of having failed, as far ahead as anybody asks: {@link CommonPath#VISITED} horizons
     * @param crossing chance of being over the limit, up to where it is as good as certain
     */
    record Curves(double[] failing, double[] crossing) {}

    /** @param certain chance from which on the rest of the crossing curve is left as it is */
    static Curves of(UnitState unit, CommonPath path, double certain) {
        CrossingCurve curve = new CrossingCurve(unit, path);
        double limitVariance = square(path.constants().logLimitSpread());
        double[] failing = new double[CommonPath.VISITED];
        double[] crossing = new double[CommonPath.HORIZONS.length];
        double failed = 0;
        double crossed = 0;
        for (int k = 0; k < crossing.length && (k < failing.length || crossed < certain); k++) {
            curve.lookAhead(k);
            if (k < failing.length) {
                failed = Math.max(failed, curve.chance(k, limitVariance, 1));
                failing[k] = failed;
            }
            crossed = crossed < certain ? Math.max(crossed, curve.chance(k, 0, path.widening())) : crossed;
            crossing[k] = crossed;
        }
        return new Curves(failing, crossing);
    }

    /** Chance of having failed already. */
    static double failed(UnitState unit, CommonPath path) {
        CrossingCurve curve = new CrossingCurve(unit, path);
        curve.lookAhead(0);
        return curve.chance(0, square(path.constants().logLimitSpread()), 1);
    }

    private void lookAhead(int horizon) {
        double years = CommonPath.HORIZONS[horizon];
        double share = path.share(unit, horizon);
        double room = constants.logLimit() - share * path.mean(horizon);
        double shared = share * share * path.variance(horizon);
        stays = (1 - unit.goingWeight) * path.staying(horizon);
        turns = 1 - unit.goingWeight - stays;
        healthyExcess = unit.healthy.rise + years * unit.healthy.rate - room;
        healthyVariance = shared + unit.healthy.riseVarianceAhead(years, constants.healthyNoise());
        goingExcess = unit.going.rise + years * unit.going.rate + path.gained(years) - room;
        goingVariance = shared + unit.going.riseVarianceAhead(years, constants.goingNoise());
    }

    private double chance(int horizon, double limitVariance, double widening) {
        double chance = stays * beyond(healthyExcess, widening * (healthyVariance + limitVariance))
                + unit.goingWeight * beyond(goingExcess, widening * (goingVariance + limitVariance));
        return turns > 0 ? chance + turns * turning(horizon, limitVariance, widening) : chance;
    }

    private double turning(int horizon, double limitVariance, double widening) {
        double[] rise = path.riseOfTurned(horizon);
        double[] variance = path.varianceOfTurned(horizon);
        double sum = 0;
        for (int turn = 0; turn < rise.length; turn++) {
            sum += beyond(healthyExcess + rise[turn], widening * (healthyVariance + limitVariance + variance[turn]));
        }
        return sum / rise.length;
    }

    private static double beyond(double excess, double variance) {
        if (excess * excess >= SURE * SURE * variance) {
            return excess > 0 ? 1 : 0;
        }
        return Normal.cumulative(excess / Math.sqrt(variance));
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

    private static double square(double x) {
        return x * x;
    }
}
