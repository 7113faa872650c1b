package org.ohmstead.assessment.model.forecast;

/**
 * Constants of the filter for one kind of unit, jars or links. Levels are natural logarithms of the reading, time is in
 * years. Their origin: found on simulated estates (docs/assessment.md, "The forecast"), not on field data.
 *
 * @param levelSpread standard deviation of a new unit's level around its kind
 * @param rateSpread standard deviation of a healthy unit's own rate, per year
 * @param healthyNoise intensity of the integrated noise on a healthy unit's rate
 * @param goingNoise the same for a unit that is going
 * @param turnRate chance per year that a healthy unit turns into a going one
 * @param turnedRate mean jump of the rate when it turns, per year
 * @param turnedRateSpread its standard deviation
 * @param goingAcceleration growth of a going unit's rate, per year²
 * @param startsGoing chance that a unit is a going one from the day it is fitted
 * @param readingNoise repeatability of a reading at the start, standard deviation
 * @param readingNoiseFloor the learned repeatability never falls below
 * @param surveyNoise error common to a whole survey at the start, standard deviation
 * @param commonRate mean rate of the common rise when new, per year
 * @param commonRateSpread its standard deviation
 * @param commonAcceleration mean acceleration of the common rise, per year²
 * @param commonAccelerationSpread its standard deviation
 * @param commonNoise intensity of the integrated noise on the common rate
 * @param openRate chance per year of a sudden failure that no reading announces
 * @param logLimit logarithm of the rise over new at which the unit no longer serves
 * @param logLimitSpread how uncertain that limit is, standard deviation
 * @param quietReplacementRate chance per year that somebody renews a sound unit without a record
 */
public record UnitConstants(
        double levelSpread,
        double rateSpread,
        double healthyNoise,
        double goingNoise,
        double turnRate,
        double turnedRate,
        double turnedRateSpread,
        double goingAcceleration,
        double startsGoing,
        double readingNoise,
        double readingNoiseFloor,
        double surveyNoise,
        double commonRate,
        double commonRateSpread,
        double commonAcceleration,
        double commonAccelerationSpread,
        double commonNoise,
        double openRate,
        double logLimit,
        double logLimitSpread,
        double quietReplacementRate) {

    static UnitConstants jars() {
        return new UnitConstants(
                .05,
                .006,
                2e-5,
                3e-3,
                .015,
                .015,
                .03,
                .030,
                0,
                .015,
                .008,
                .027,
                .004,
                .006,
                .002,
                .002,
                3e-5,
                .001,
                Math.log(1.33),
                .085,
                .002);
    }

    static UnitConstants links() {
        return new UnitConstants(
                .06,
                .002,
                1e-5,
                3e-3,
                .008,
                .08,
                .03,
                .008,
                .025,
                .045,
                .025,
                .022,
                .002,
                .003,
                0,
                .0003,
                1e-6,
                .003,
                Math.log(1.20),
                .03,
                .004);
    }

    /** The same constants with the limit learned from capacity tests of a jar type. */
    public UnitConstants withLimit(double newLogLimit, double newLogLimitSpread) {
        return new UnitConstants(
                levelSpread,
                rateSpread,
                healthyNoise,
                goingNoise,
                turnRate,
                turnedRate,
                turnedRateSpread,
                goingAcceleration,
                startsGoing,
                readingNoise,
                readingNoiseFloor,
                surveyNoise,
                commonRate,
                commonRateSpread,
                commonAcceleration,
                commonAccelerationSpread,
                commonNoise,
                openRate,
                newLogLimit,
                newLogLimitSpread,
                quietReplacementRate);
    }
}
