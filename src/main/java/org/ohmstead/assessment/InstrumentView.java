package org.ohmstead.assessment;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What is known of an instrument.
 *
 * @param calibrationDue as its latest survey said
 * @param finding null while nothing can be told of what it reads
 * @param off whether that is enough for a doubt
 * @param lookedAt when the estate was last looked through
 */
public record InstrumentView(
        String serial,
        int surveys,
        int strings,
        LocalDate firstOn,
        LocalDate lastOn,
        @Nullable LocalDate calibrationDue,
        @Nullable Finding finding,
        boolean off,
        Instant lookedAt) {

    /**
     * What it reads off, relative: 0.03 is 3 % high; never applied to readings.
     *
     * @param low of the 95 % interval
     * @param high of the 95 % interval
     * @param surveys that tell so
     * @param days on which they were taken
     */
    public record Finding(double offset, double low, double high, LocalDate since, int surveys, int days) {

        /** "3 % high (1 to 5 %)", "1 % low (4 % low to 2 % high)". */
        public String words() {
            String range = low >= 0 || high <= 0
                    ? percent(Math.min(Math.abs(low), Math.abs(high))) + " to "
                            + percent(Math.max(Math.abs(low), Math.abs(high))) + " %"
                    : percent(-low) + " % low to " + percent(high) + " % high";
            return percent(Math.abs(offset)) + " % " + (offset < 0 ? "low" : "high") + " (" + range + ")";
        }

        /** To half a percent, no finer than it is known. */
        private static String percent(double share) {
            long halves = Math.round(Math.abs(share) * 200);
            return halves / 2 + (halves % 2 == 0 ? "" : ".5");
        }
    }

    /** Whether its calibration had run out on that day. */
    public boolean isPastCalibration(LocalDate today) {
        return calibrationDue != null && calibrationDue.isBefore(today);
    }
}
