package org.ohmstead.reports;

import java.time.Instant;
import java.util.List;

/**
 * A signature under a quarter, laid beside what the quarter says now.
 *
 * @param sha256 of the signed lines, hexadecimal
 * @param gone signed lines that no longer stand so, as CSV
 * @param come lines that were not there when it was signed, as CSV
 */
public record SignOff(
        String signedBy, Instant signedAt, String sha256, String note, List<String> gone, List<String> come) {

    public SignOff {
        gone = List.copyOf(gone);
        come = List.copyOf(come);
    }

    public boolean isUnchanged() {
        return gone.isEmpty() && come.isEmpty();
    }
}
