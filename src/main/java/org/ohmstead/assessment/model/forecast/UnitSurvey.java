package org.ohmstead.assessment.model.forecast;

/** One reading of one unit taken into the filter: believed, doubted, set aside, or taken as somebody's unrecorded work. */
final class UnitSurvey {
    private final GroupSurvey survey;
    private final UnitState unit;
    private final ForecastParameters parameters;

    UnitSurvey(GroupSurvey survey, UnitState unit) {
        this.survey = survey;
        this.unit = unit;
        this.parameters = survey.parameters();
    }

    /** Returns the squared innovation against its expected variance, NaN when the reading was not an ordinary one. */
    double take(double log, boolean lowVolts) {
        double reading = survey.againstCentre(unit, log);
        double noise = survey.noise(unit);
        double innovation = reading - unit.expected();
        if (!lowVolts && unit.readings > 0 && looksRenewed(reading, noise, innovation)) {
            return renew(log);
        }
        double distance = unit.distance(reading, noise);
        boolean repeats = unit.pending * innovation > 0;
        if (repeats && distance > parameters.inflateBeyond()) {
            return confirm(log, innovation, lowVolts);
        }
        if (distance > parameters.setAsideBeyond() && !repeats) {
            unit.pending = innovation;
            return Double.NaN;
        }
        unit.pending = Double.NaN;
        return believe(reading, noise);
    }

    private double believe(double reading, double noise) {
        double ratio = square(reading - unit.expected()) / (unit.expectedVariance() + noise);
        unit.observe(reading, noise, parameters.misprobeShare(), square(parameters.misprobeSpread()));
        return ratio;
    }

    /** A second survey sees it too: a fall is a new unit, a rise is real. */
    private double confirm(double log, double innovation, boolean lowVolts) {
        unit.pending = Double.NaN;
        if (innovation < 0 && !lowVolts) {
            return renew(log);
        }
        if (wasWrongAtFirst(log)) {
            return startAnew(log);
        }
        unit.step(innovation);
        unit.observe(survey.againstCentre(unit, log), survey.noise(unit));
        return Double.NaN;
    }

    /** Two readings like those of its kind after a single one far off: that one was wrong. */
    private boolean wasWrongAtFirst(double log) {
        return unit.readings == 1 && unit.ownLevel && unit.tookOwnLevelByReading && survey.isOfItsKind(unit, log);
    }

    private double startAnew(double log) {
        unit.restart(unit.startYears);
        unit.ownLevel = false;
        unit.tookOwnLevelByReading = false;
        unit.predict(survey.years() - unit.startYears);
        unit.observe(survey.againstCentre(unit, log), survey.noise(unit));
        return Double.NaN;
    }

    private double renew(double log) {
        double when = Math.max(unit.startYears, survey.years() - survey.sinceLast() / 2);
        unit.remake(when);
        unit.suspectedRestartYears = when;
        unit.predict(survey.years() - when);
        unit.observe(survey.againstCentre(unit, log), survey.noise(unit));
        return Double.NaN;
    }

    /** Whether a new unit explains the fall better than the old one with its misprobes, odds for such work included. */
    private boolean looksRenewed(double reading, double noise, double innovation) {
        if (innovation > -3 * survey.readingDeviation()) {
            return false;
        }
        double wrong = parameters.misprobeShare();
        double asBefore = (1 - wrong) * unit.density(reading, noise)
                + wrong * Normal.density(innovation, noise + square(parameters.misprobeSpread()));
        return odds() * densityAsNew(reading, noise) > asBefore;
    }

    private double odds() {
        double work = unit.constants.quietReplacementRate() * survey.sinceLast();
        return work + parameters.unrecordedShare() * survey.riskBefore(unit);
    }

    /** A new unit has no part in the common rise yet, while the reading still counts this one's part. */
    private double densityAsNew(double reading, double noise) {
        double level = unit.ownLevel ? unit.healthy.level : 0;
        double partInCommonRise = survey.share(unit) * survey.commonRise();
        return Normal.density(reading + partInCommonRise - level, square(unit.constants.levelSpread()) + noise);
    }

    private static double square(double x) {
        return x * x;
    }
}
