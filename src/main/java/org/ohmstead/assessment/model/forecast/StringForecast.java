package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/**
 * The forecast for a string as of its last survey.
 *
 * @param jars in order of position
 * @param links in order of ordinal
 * @param commonRise rise of the whole string's jars since new, 0.12 means 12 %
 * @param commonRatePerYear logarithmic
 * @param surveyError error that the last survey's jar readings share, 0.03 means 3 % high; NaN when unknown
 * @param surveyErrorDeviation its standard deviation
 * @param readingNoise learned repeatability of a jar reading, relative
 */
public record StringForecast(
        LocalDate asOf,
        int parameterVersion,
        List<UnitForecast> jars,
        List<UnitForecast> links,
        double commonRise,
        double commonRatePerYear,
        double surveyError,
        double surveyErrorDeviation,
        double readingNoise,
        NextVisit next,
        Set<DataDoubt> doubts) {

    public StringForecast {
        jars = List.copyOf(jars);
        links = List.copyOf(links);
        doubts = Set.copyOf(doubts);
    }
}
