package org.ohmstead.fleet.csv;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the register says of a string; known by its site and name.
 *
 * @param site code of the site
 * @param jarType code of the jar type it was built with
 * @param tiers jars per tier, in the order in which the positions run
 * @param floatSetpointVoltsPerCell what the charger is set to at 25 °C
 * @param endVolts of the whole string at the end of the design duty
 * @param surveyIntervalMonths the owner's own interval
 */
public record StringEntry(
        String site,
        String name,
        String jarType,
        List<Integer> tiers,
        int strapsPerLink,
        @Nullable Double floatSetpointVoltsPerCell,
        @Nullable Double designLoadAmps,
        @Nullable Double designMinutes,
        @Nullable Double endVolts,
        int parallelStrings,
        LocalDate inServiceOn,
        int surveyIntervalMonths,
        @Nullable LocalDate retiredOn) {

    public StringEntry {
        // a body may leave them out; an empty plan is refused by the sheet
        tiers = tiers == null ? List.of() : List.copyOf(tiers);
    }

    /** Number of jars in the string. */
    public int positions() {
        return tiers.stream().mapToInt(Integer::intValue).sum();
    }
}
