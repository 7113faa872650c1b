package org.ohmstead.programme;

import java.time.LocalDate;

/**
 * Something that a round is meant to do at a string.
 *
 * @param requirement the code of a requirement, or {@link #SURVEY}
 * @param activity what to do
 * @param dueOn the last day in time, as it was when the round was planned
 * @param done whether something was recorded since that does it
 */
public record RoundTask(
        long stringId, String stringName, String requirement, String activity, LocalDate dueOn, boolean done) {

    /** What interval, recheck or risk ask for. */
    public static final String SURVEY = "survey";

    static final String SURVEY_WORDS = "Survey the string";

    /** Names it among all of its site. */
    public String key() {
        return stringId + "/" + requirement;
    }

    public boolean isMissedBy(LocalDate day) {
        return dueOn.isBefore(day);
    }
}
