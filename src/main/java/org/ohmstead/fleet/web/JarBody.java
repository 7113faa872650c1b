package org.ohmstead.fleet.web;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.StringView;
import org.ohmstead.fleet.csv.OccupancyEntry;

/**
 * A jar in its place, as a program states it.
 *
 * @param jarType the string's own when left out
 * @param baselineOhmic milliohms, or siemens for conductance
 */
record JarBody(
        int position,
        @Nullable String jarType,
        @Nullable String serial,
        LocalDate from,
        @Nullable LocalDate until,
        @Nullable String reason,
        @Nullable String leftReason,
        @Nullable Double baselineOhmic,
        @Nullable String baselineSource) {

    OccupancyEntry in(StringView string) {
        return new OccupancyEntry(
                string.siteCode(),
                string.name(),
                position,
                jarType == null ? string.jarTypeCode() : jarType,
                serial,
                from,
                until,
                reason == null ? "" : reason,
                leftReason == null ? "" : leftReason,
                baselineOhmic,
                baselineSource);
    }
}
