package org.ohmstead.assessment.model.estate;

/** How jars of a type last: a Weibull law fitted to the estate's own jars. */
public record LifeLine(double scaleYears, double shape) {

    /** What is used up of a life between two ages, as minus the logarithm of the share that lasts. */
    double hazardBetween(double fromYears, double untilYears) {
        return Math.max(0, used(untilYears) - used(Math.max(0, fromYears)));
    }

    /** Chance that a jar of one age fails before it reaches another. */
    public double failsBetween(double fromYears, double untilYears) {
        return -Math.expm1(-hazardBetween(fromYears, untilYears));
    }

    private double used(double years) {
        return years > 0 ? Math.pow(years / scaleYears, shape) : 0;
    }
}
