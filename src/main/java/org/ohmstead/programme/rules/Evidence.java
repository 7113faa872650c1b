package org.ohmstead.programme.rules;

import java.time.LocalDate;

/**
 * Something that was done, with the record that shows it.
 *
 * @param doneOn in the site's calendar
 * @param covered how many of the units it covered
 * @param outOf how many there are; 1 for what is not read unit by unit
 * @param recordId id of the survey, visit or capacity test
 */
public record Evidence(EvidenceKind kind, LocalDate doneOn, int covered, int outOf, long recordId) {

    public static Evidence whole(EvidenceKind kind, LocalDate doneOn, long recordId) {
        return new Evidence(kind, doneOn, 1, 1, recordId);
    }

    /** Whether it covers that share of the units; of 1.0 every single one. */
    boolean covers(double share) {
        return outOf > 0 && covered >= Math.ceil(share * outOf - 1e-9) && covered > 0;
    }

    /** "survey 12", "visit 4", "capacity test 2": where to look. */
    public String record() {
        return (kind.isReading() ? "survey " : kind.isCheck() ? "visit " : "capacity test ") + recordId;
    }
}
