package org.ohmstead.fleet;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.DateRange;

/**
 * Which jar sat at a position and when.
 *
 * @param during half-open, in the site's dates
 * @param baselineOhmic from a commissioning record: milliohms, or siemens for conductance
 */
public record OccupancyView(
        long id,
        long stringId,
        int position,
        long jarTypeId,
        String jarTypeCode,
        @Nullable String serial,
        DateRange during,
        String reason,
        String leftReason,
        @Nullable Double baselineOhmic,
        @Nullable String baselineSource) {

    /** "jar 4711" or, without a serial, "a jar". */
    public String jar() {
        return serial == null ? "a jar without serial" : "jar " + serial;
    }
}
