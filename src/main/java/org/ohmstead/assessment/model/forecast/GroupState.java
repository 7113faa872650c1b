package org.ohmstead.assessment.model.forecast;

import java.util.Arrays;

/** The filter's belief about all jars, or all links, of one string. */
final class GroupState {
    final UnitConstants constants;
    final UnitState[] units;
    CommonState common;
    /** How many times faster than the reference life this type ages. */
    double pace = 1;

    /** When the string as a whole was fitted, years after it went into service. */
    double startYears;
    /** Up to when everything is predicted. */
    double clockYears;

    int surveys;
    /** Variance of a single reading, learned. */
    double readingVariance;
    /** Error that the last survey shares, and its standard deviation; NaN before the first. */
    double lastSurveyError = Double.NaN;

    double lastSurveyErrorDeviation = Double.NaN;
    double lastCentre = Double.NaN;
    double lastCentreVariance = Double.NaN;
    /** When the whole string seems to have been renewed or remade without record, NaN when not. */
    double suspectedRenewalYears = Double.NaN;

    GroupState(UnitConstants constants, int count) {
        this.constants = constants;
        this.units = new UnitState[count];
        this.common = new CommonState(constants);
        this.readingVariance = constants.readingNoise() * constants.readingNoise();
    }

    void predict(double years) {
        double since = years - Math.max(clockYears, startYears);
        common.predict(since);
        double turning = UnitState.turning(constants, since);
        for (UnitState unit : units) {
            double ofUnit = years - Math.max(clockYears, unit.startYears);
            unit.predict(ofUnit, ofUnit == since ? turning : UnitState.turning(constants, ofUnit));
        }
        clockYears = Math.max(clockYears, years);
    }

    /** New units throughout: the level when new is known from before, rise and rates start again. */
    void restartCommon(double when) {
        double level = common.state.mean[CommonState.LEVEL];
        double spread = Math.sqrt(common.state.cov(CommonState.LEVEL, CommonState.LEVEL));
        startYears = when;
        common.restart(pace, level, Math.hypot(spread, constants.levelSpread()));
    }

    /** Part that a unit takes in the common rise: all of it, unless it was fitted later than the string. */
    double share(UnitState unit, double years, double exponent) {
        double age = years - unit.startYears;
        double stringAge = years - startYears;
        return age >= stringAge ? 1 : age <= 0 ? 0 : Math.pow(age / stringAge, exponent);
    }

    GroupState copy() {
        GroupState copy = new GroupState(constants, units.length);
        Arrays.setAll(copy.units, i -> units[i].copy());
        copy.common = common.copy();
        copy.pace = pace;
        copy.startYears = startYears;
        copy.clockYears = clockYears;
        copy.surveys = surveys;
        copy.readingVariance = readingVariance;
        copy.lastSurveyError = lastSurveyError;
        copy.lastSurveyErrorDeviation = lastSurveyErrorDeviation;
        copy.lastCentre = lastCentre;
        copy.lastCentreVariance = lastCentreVariance;
        copy.suspectedRenewalYears = suspectedRenewalYears;
        return copy;
    }

    void write(DoubleTape tape) {
        common.write(tape);
        tape.putAll(new double[] {
            pace,
            startYears,
            clockYears,
            surveys,
            readingVariance,
            lastSurveyError,
            lastSurveyErrorDeviation,
            lastCentre,
            lastCentreVariance,
            suspectedRenewalYears
        });
        for (UnitState unit : units) {
            unit.write(tape);
        }
    }

    static GroupState read(DoubleTape tape, UnitConstants constants, int count) {
        GroupState group = new GroupState(constants, count);
        group.common = CommonState.read(tape, constants);
        group.pace = tape.take();
        group.startYears = tape.take();
        group.clockYears = tape.take();
        group.surveys = (int) tape.take();
        group.readingVariance = tape.take();
        group.lastSurveyError = tape.take();
        group.lastSurveyErrorDeviation = tape.take();
        group.lastCentre = tape.take();
        group.lastCentreVariance = tape.take();
        group.suspectedRenewalYears = tape.take();
        Arrays.setAll(group.units, i -> UnitState.read(tape, constants));
        return group;
    }
}
