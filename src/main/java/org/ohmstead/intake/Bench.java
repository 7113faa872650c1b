package org.ohmstead.intake;

import java.util.List;

/**
 * A held survey on the bench: how it stands, beside what was expected, and what could put it right.
 *
 * @param ohmicUnit empty while the survey can't be laid out along a string
 */
public record Bench(UploadView upload, String ohmicUnit, Outcome now, List<BenchLine> lines, List<Offer> offers) {

    /** The steps that are replayed; the last of them can be taken back. */
    public List<RepairView> inForce() {
        return upload.repairs().stream().filter(repair -> !repair.takenBack()).toList();
    }
}
