package org.ohmstead.ledger;

import java.util.List;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.Refused;

/** What the ledger must know of a string before it takes a survey of it. */
record StringPlace(long stringId, String name, long areaId, int positions) {

    void requireLengthOf(NewSurvey survey) {
        int surveyed = survey.readings().positions();
        if (surveyed != positions) {
            throw new Refused(
                    "The survey does not fit the string " + name + ".",
                    List.of(Flaw.ofFile(
                            "The survey has " + surveyed + " positions, the string has " + positions + ".",
                            "Give every position a row, or correct the register.")));
        }
    }
}
