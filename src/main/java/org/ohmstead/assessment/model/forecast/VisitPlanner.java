package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;

/** Finds the longest interval over which the gradual risk of units not flagged yet stays tolerable. */
final class VisitPlanner {
    private static final double DAYS_PER_YEAR = 365.25;

    private final ForecastParameters parameters;
    private final LocalDate asOf;
    private final double tolerated;
    private final double[] total = new double[CommonPath.VISITED];
    private double[] largest = new double[CommonPath.VISITED];
    private boolean largestIsLink;
    private int largestUnit = -1;
    private boolean pendingIsLink;
    private int pendingUnit = -1;
    private boolean pending;

    VisitPlanner(ForecastParameters parameters, LocalDate asOf, int positions) {
        this.parameters = parameters;
        this.asOf = asOf;
        this.tolerated = parameters.riskPer100Jars() * positions / 100;
    }

    /** Adds one unit's risk. */
    void consider(UnitForecast unit, double[] beyondLimit, boolean link) {
        if (Double.isFinite(unit.pendingChange()) && !pending) {
            pending = true;
            pendingIsLink = link;
            pendingUnit = unit.number();
        }
        if (!unit.flagged()) {
            add(unit.number(), newlyBeyond(beyondLimit), link);
        }
    }

    private void add(int number, double[] risk, boolean link) {
        for (int k = 0; k < risk.length; k++) {
            total[k] += risk[k];
        }
        int year = 5;
        if (risk[year] > largest[year]) {
            largest = risk;
            largestIsLink = link;
            largestUnit = number;
        }
    }

    private static double[] newlyBeyond(double[] beyondLimit) {
        double[] risk = new double[beyondLimit.length];
        double serves = 1 - beyondLimit[0];
        for (int k = 0; k < risk.length; k++) {
            risk[k] = serves > 1e-9 ? (beyondLimit[k] - beyondLimit[0]) / serves : 0;
        }
        return risk;
    }

    NextVisit next() {
        double byRisk = CrossingCurve.reaches(total, tolerated);
        double years =
                Math.max(parameters.shortestIntervalYears(), Math.min(byRisk, parameters.longestIntervalYears()));
        if (pending && parameters.rereadWithinYears() < years) {
            LocalDate reread = after(parameters.rereadWithinYears());
            return new NextVisit(reread, NextVisit.Governs.PENDING_READING, pendingIsLink, pendingUnit);
        }
        boolean risky = byRisk < parameters.longestIntervalYears();
        return new NextVisit(
                after(years),
                risky ? NextVisit.Governs.RISK : NextVisit.Governs.LONGEST_INTERVAL,
                risky && largestIsLink,
                risky ? largestUnit : -1);
    }

    private LocalDate after(double years) {
        return asOf.plusDays(Math.round(years * DAYS_PER_YEAR));
    }
}
