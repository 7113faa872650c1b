package org.ohmstead.demo;

import java.time.LocalDate;

/**
 * A test set of a crew.
 *
 * @param reads what it shows for 1
 */
record Instrument(String serial, double reads) {

    private static final String[] SERIALS = {"TS-0417", "TS-0422", "TS-0561", "TS-0608"};
    /** In this area the old test set was given up for one that reads high. */
    private static final int CHANGED_AREA = 2;

    private static final int CHANGED_MONTHS_AGO = 7;

    static Instrument inUse(int area, LocalDate on, LocalDate today) {
        boolean changed = area == CHANGED_AREA && on.isAfter(today.minusMonths(CHANGED_MONTHS_AGO));
        return changed ? new Instrument("TS-0923", 1.03) : new Instrument(SERIALS[area], 1);
    }
}
