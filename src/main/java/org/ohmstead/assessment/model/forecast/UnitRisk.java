package org.ohmstead.assessment.model.forecast;

/**
 * Chance of failing within twelve months.
 *
 * @param probability given that the unit has not failed yet
 * @param score without that condition
 */
record UnitRisk(double probability, double score) {
    private static final double TRUST_IN_SHORT = .85;
    private static final int NOW = 0;
    private static final int IN_A_YEAR = 5;

    static UnitRisk of(double[] beyondLimit, double shorted, UnitState unit, ForecastParameters parameters) {
        double noShort = 1 - TRUST_IN_SHORT * shorted;
        double score = 1 - (1 - beyondLimit[IN_A_YEAR]) * noShort;
        double serves = 1 - beyondLimit[NOW];
        double lasts = serves > 1e-9 ? (1 - beyondLimit[IN_A_YEAR]) / serves : 0;
        double noSuddenEnd = Math.exp(-unit.constants.openRate() * ForecastParameters.HORIZON_YEARS);
        return new UnitRisk(within(1 - lasts * noShort * noSuddenEnd), within(score));
    }

    private static double within(double chance) {
        return Math.max(0, Math.min(1, chance));
    }
}
