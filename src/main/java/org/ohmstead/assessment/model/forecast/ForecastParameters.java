package org.ohmstead.assessment.model.forecast;

import org.ohmstead.assessment.model.JarTypeFacts;

/**
 * Every constant of the forecast in one place. A change of any value asks for a new version: stored states and results
 * carry it, and a state of another version is rebuilt.
 *
 * @param version of this set
 * @param jars constants for jars
 * @param links constants for links
 * @param unknownLevelSpread spread of the level when new around the maker's reference value, logarithmic
 * @param inflateBeyond innovations beyond this many standard deviations have their noise inflated
 * @param setAsideBeyond readings beyond this many are set aside once and asked for again
 * @param renewalFall joint fall of a string, after as much rise, that means it was renewed without record
 * @param shareExponent a later-fitted unit takes part in the common rise as (its age / the string's age) to this power
 * @param misprobeShare share of readings that are plainly wrong
 * @param misprobeSpread logarithmic spread of such readings
 * @param unrecordedShare share of replacements and remakes that nobody records
 * @param flagAbove score above which a jar or link is flagged
 * @param riskPer100Jars gradual risk that may build up before the next survey, failures per 100 jars
 * @param rereadWithinYears a pending reading asks for a re-read within this time
 * @param shortestIntervalYears the next survey is never asked for earlier
 * @param longestIntervalYears nor later
 * @param referenceLifeYears design life at which the common rate is as given
 * @param instrumentSpread spread of the offsets between instruments, logarithmic
 * @param instrumentDayDeviation error that all strings share that an instrument reads on a day, logarithmic
 * @param surveyOwnDeviation error of a survey besides that
 * @param expectationsAlike how far the expectations for strings of one estate err together, as a correlation
 * @param instrumentDrift how far an instrument's offset wanders, per square root of a year
 * @param instrumentLeastDeviation an offset is never held to be known better than this
 * @param intervalWidening factor on the variance from which jars' crossing dates are said
 */
public record ForecastParameters(
        int version,
        UnitConstants jars,
        UnitConstants links,
        double unknownLevelSpread,
        double inflateBeyond,
        double setAsideBeyond,
        double renewalFall,
        double shareExponent,
        double misprobeShare,
        double misprobeSpread,
        double unrecordedShare,
        double flagAbove,
        double riskPer100Jars,
        double rereadWithinYears,
        double shortestIntervalYears,
        double longestIntervalYears,
        double referenceLifeYears,
        double instrumentSpread,
        double instrumentDayDeviation,
        double surveyOwnDeviation,
        double expectationsAlike,
        double instrumentDrift,
        double instrumentLeastDeviation,
        double intervalWidening) {

    /** The set in force. */
    public static ForecastParameters standard() {
        return new ForecastParameters(
                2,
                UnitConstants.jars(),
                UnitConstants.links(),
                .20,
                2.5,
                4.5,
                .09,
                1.9,
                .01,
                .25,
                .15,
                .20,
                .6,
                .25,
                1.0 / 12,
                2,
                12,
                .02,
                .022,
                .012,
                .5,
                .015,
                .005,
                1.6);
    }

    /** With the limit that is known of the jar type, if one is. */
    public ForecastParameters of(JarTypeFacts type) {
        return type.logLimit() > 0 && type.logLimitSpread() > 0
                ? withJars(jars.withLimit(type.logLimit(), type.logLimitSpread()))
                : this;
    }

    /** The same set with other constants for jars, such as a limit learned for their type. */
    public ForecastParameters withJars(UnitConstants others) {
        return new ForecastParameters(
                version,
                others,
                links,
                unknownLevelSpread,
                inflateBeyond,
                setAsideBeyond,
                renewalFall,
                shareExponent,
                misprobeShare,
                misprobeSpread,
                unrecordedShare,
                flagAbove,
                riskPer100Jars,
                rereadWithinYears,
                shortestIntervalYears,
                longestIntervalYears,
                referenceLifeYears,
                instrumentSpread,
                instrumentDayDeviation,
                surveyOwnDeviation,
                expectationsAlike,
                instrumentDrift,
                instrumentLeastDeviation,
                intervalWidening);
    }

    /** Chance per 12 months and risk in a year are both over this horizon. */
    static final double HORIZON_YEARS = 1;
}
