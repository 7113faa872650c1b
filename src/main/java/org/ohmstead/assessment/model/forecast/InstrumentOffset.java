package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;

/**
 * How far an instrument reads off what the strings' own histories make expect, relative: 0.03 means 3 % high. A data
 * doubt to look into, never applied to readings. What lasts for years cannot be told from the strings' own ageing for
 * certain: the offset leans towards zero, and the interval is wide enough for that.
 *
 * @param low of the 95 % interval
 * @param high of the 95 % interval
 * @param since first day from which it reads like that
 * @param surveys how many surveys tell so
 */
public record InstrumentOffset(
        String instrument, double offset, double low, double high, LocalDate since, int days, int surveys) {

    /** Whether the interval leaves zero out. */
    public boolean isOff() {
        return low > 0 || high < 0;
    }
}
