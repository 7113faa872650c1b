package org.ohmstead.assessment.model;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a reading is measured against, and where that came from.
 *
 * @param value in the unit of the reading
 * @param takenOn day of the survey it was taken from, if it was
 */
public record Baseline(
        double value, Origin origin, @Nullable LocalDate takenOn) {

    /** In the order of preference of the written rule. */
    public enum Origin {
        ENTERED("entered"),
        SURVEY("survey after settling"),
        PROVISIONAL("earliest survey, provisional"),
        FIRST_READING("first reading since the joint was made"),
        JAR_TYPE("reference of the jar type");

        private final String words;

        Origin(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** "survey after settling, 2020-06-14". */
    public String words() {
        return takenOn == null ? origin.words() : origin.words() + ", " + takenOn;
    }
}
