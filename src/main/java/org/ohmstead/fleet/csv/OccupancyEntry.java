package org.ohmstead.fleet.csv;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Which jar sat where and when; known by its string, position and first day.
 *
 * @param until the first day on which it no longer sat there; null while it sits there
 * @param reason why it came
 * @param leftReason why it left
 * @param baselineOhmic from a commissioning record: milliohms, or siemens for conductance
 */
public record OccupancyEntry(
        String site,
        String string,
        int position,
        String jarType,
        @Nullable String serial,
        LocalDate from,
        @Nullable LocalDate until,
        String reason,
        String leftReason,
        @Nullable Double baselineOhmic,
        @Nullable String baselineSource) {}
