package org.ohmstead.assessment.model.estate;

import java.time.LocalDate;
import java.util.List;

/**
 * How many jars will pass their limit, by quarter: what may have to be replaced, told by readings, not by capacity.
 *
 * @param asOf today; the first quarter counts from that day on
 * @param total the whole estate in reach
 * @param byJarType by code
 * @param byArea by code
 * @param byAreaAndJarType by both
 */
public record ReplacementForecast(
        LocalDate asOf,
        List<CalendarQuarter> quarters,
        ForecastLine total,
        List<ForecastLine> byJarType,
        List<ForecastLine> byArea,
        List<ForecastLine> byAreaAndJarType) {

    public ReplacementForecast {
        quarters = List.copyOf(quarters);
        byJarType = List.copyOf(byJarType);
        byArea = List.copyOf(byArea);
        byAreaAndJarType = List.copyOf(byAreaAndJarType);
    }
}
