package org.ohmstead.worklist.model;

/** The record that shows something. */
public record Evidence(Kind kind, long id) {

    /** What kind of record. */
    public enum Kind {
        SURVEY("survey"),
        CAPACITY_TEST("capacity test"),
        VISIT("visit"),
        REMAKE("remake");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public static Evidence survey(long id) {
        return new Evidence(Kind.SURVEY, id);
    }

    public boolean isSurvey(long surveyId) {
        return kind == Kind.SURVEY && id == surveyId;
    }

    /** "survey 12". */
    public String words() {
        return kind.words() + " " + id;
    }
}
