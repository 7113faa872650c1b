package org.ohmstead.assessment.model.forecast;

import java.util.Arrays;
import org.ohmstead.statistics.Quantiles;

/** One survey of the jars, or the links, of a string taken into the filter. The group must stand at the survey's day. */
final class GroupSurvey {
    private static final double FAR_OFF_ITS_KIND = 3.5;

    private final GroupState group;
    private final ForecastParameters parameters;
    private final double[] logs;
    private final boolean[] lowVolts;
    private final double years;
    private final double sinceLast;
    private Centre centre = new Centre(Double.NaN, Double.NaN, 0);
    /** Whether the centre still fits what is believed of the units. */
    private boolean located;

    /**
     * @param logs logarithms of the readings, rising with age; NaN where missing
     * @param lowVolts jars whose volts are low, so that a falling reading is no new jar
     * @param sinceLast years since the last survey
     */
    GroupSurvey(GroupState group, ForecastParameters parameters, double[] logs, boolean[] lowVolts, double sinceLast) {
        this.group = group;
        this.parameters = parameters;
        this.logs = logs;
        this.lowVolts = lowVolts;
        this.years = group.clockYears;
        this.sinceLast = sinceLast;
    }

    /** @param instrument what the estate knows of the error shared by all strings read with this instrument */
    void take(SharedError instrument) {
        if (count(logs) == 0) {
            return;
        }
        takeOwnLevels();
        locate();
        if (new RenewalCheck(group, parameters, years, sinceLast).apply(logs, centre)) {
            located = false;
            locate();
        }
        takeCommon(instrument);
        double[] squares = new double[logs.length];
        Arrays.fill(squares, Double.NaN);
        for (int i = 0; i < logs.length; i++) {
            group.units[i].inLastSurvey = Double.isFinite(logs[i]);
            if (Double.isFinite(logs[i])) {
                squares[i] = new UnitSurvey(this, group.units[i]).take(logs[i], lowVolts[i]);
            }
        }
        learnReadingNoise(squares);
        group.surveys++;
    }

    /** A first reading far off its kind is its own baseline; only links differ that much from the day they are made. */
    private void takeOwnLevels() {
        if (group.constants.startsGoing() == 0) {
            return;
        }
        findCentre();
        double limit = FAR_OFF_ITS_KIND * Math.hypot(group.constants.levelSpread(), group.constants.readingNoise());
        for (int i = 0; i < logs.length; i++) {
            UnitState unit = group.units[i];
            boolean isFirst = unit.readings == 0 && !unit.ownLevel && Double.isFinite(logs[i]);
            if (isFirst && Math.abs(beyondString(i) - centre.value()) > limit) {
                unit.takeOwnLevel();
                unit.tookOwnLevelByReading = true;
                located = false;
            }
        }
    }

    /** Whether it reads like a new one of its kind, the common rise included. */
    boolean isOfItsKind(UnitState unit, double log) {
        double limit = FAR_OFF_ITS_KIND * Math.hypot(group.constants.levelSpread(), group.constants.readingNoise());
        return Math.abs(againstCentre(unit, log)) < limit;
    }

    private void locate() {
        findCentre();
        group.common.centreUnknownLevel(centre.value());
    }

    private void findCentre() {
        if (!located) {
            centre = centre();
            located = true;
        }
    }

    /** From the units whose level tells of the string; from all when there is no such unit. */
    private Centre centre() {
        Centre ofKind = centre(false);
        return ofKind.readings() > 0 ? ofKind : centre(true);
    }

    private Centre centre(boolean all) {
        double[] values = new double[logs.length];
        double[] variances = new double[logs.length];
        for (int i = 0; i < logs.length; i++) {
            UnitState unit = group.units[i];
            values[i] = all || !unit.awaitsOwnLevel() ? beyondString(i) : Double.NaN;
            variances[i] = unit.expectedVariance() + group.readingVariance;
        }
        return Centre.of(values, variances);
    }

    /** The reading without what is peculiar to its unit. */
    private double beyondString(int i) {
        UnitState unit = group.units[i];
        return logs[i] - unit.expected() + (1 - share(unit)) * group.common.rise();
    }

    /** Distance of the centre from what is expected, without taking anything in. */
    SurveyInnovation innovation() {
        findCentre();
        boolean known = group.surveys > 0 && centre.readings() > 0;
        double value = known ? centre.value() - group.common.expected() : Double.NaN;
        return new SurveyInnovation(value, group.common.expectedVariance() + centre.variance());
    }

    private void takeCommon(SharedError instrument) {
        group.common.observe(centre.value(), centre.variance(), instrument, parameters);
        group.lastCentre = centre.value();
        group.lastCentreVariance = centre.variance();
        group.lastSurveyError = centre.value() - group.common.expected();
        group.lastSurveyErrorDeviation = Math.sqrt(group.common.expectedVariance() + centre.variance());
    }

    private static int count(double[] values) {
        int count = 0;
        for (double value : values) {
            count += Double.isFinite(value) ? 1 : 0;
        }
        return count;
    }

    /** By the middle of the squares, which a few wild readings cannot move. */
    private void learnReadingNoise(double[] squares) {
        int seen = count(squares);
        if (seen < 4) {
            return;
        }
        double medianOfChiSquare = .4549;
        double seenVariance = group.readingVariance * Quantiles.median(squares) / medianOfChiSquare;
        double learned = group.readingVariance + .15 * seen / (seen + 10.0) * (seenVariance - group.readingVariance);
        double floor = square(group.constants.readingNoiseFloor());
        group.readingVariance = Math.max(floor, Math.min(learned, 9 * square(group.constants.readingNoise())));
    }

    double share(UnitState unit) {
        return group.share(unit, years, parameters.shareExponent());
    }

    /** What a unit's reading says about the unit alone, against the centre of this survey. */
    double againstCentre(UnitState unit, double log) {
        return log - centre.value() + (1 - share(unit)) * group.common.rise();
    }

    /** Noise of that. */
    double noise(UnitState unit) {
        double ofShare = square(1 - share(unit)) * group.common.state.cov(CommonState.RISE, CommonState.RISE);
        return group.readingVariance + centre.variance() + ofShare;
    }

    ForecastParameters parameters() {
        return parameters;
    }

    double years() {
        return years;
    }

    double sinceLast() {
        return sinceLast;
    }

    double readingDeviation() {
        return Math.sqrt(group.readingVariance);
    }

    double commonRise() {
        return group.common.rise();
    }

    /** Chance that the unit had reached its limit before this reading. */
    double riskBefore(UnitState unit) {
        return CrossingCurve.failed(unit, CommonPath.now(group, parameters));
    }

    private static double square(double x) {
        return x * x;
    }
}
