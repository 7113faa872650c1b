package org.ohmstead.assessment.model.forecast;

/** What makes a forecast less sure, or asks somebody a question. */
public enum DataDoubt {
    PENDING_READING("the last reading is far off what was expected and is set aside until it is read again"),
    RENEWED_WITHOUT_RECORD("it reads like a new one since the last survey, but no work is recorded"),
    NEVER_READ("it was never read since it was fitted"),
    NOT_IN_LAST_SURVEY("the last survey has no reading of it"),
    STRING_RENEWED_WITHOUT_RECORD("the whole string reads like new since the last survey, but no work is recorded"),
    INSTRUMENT_CHANGED("another instrument than before read the last survey"),
    KIND_CHANGED("the last survey is of another ohmic kind than before: the jars' history starts anew"),
    NO_TEMPERATURE_COEFFICIENT("no temperature coefficient is entered for the jar type: nothing is corrected");

    private final String words;

    DataDoubt(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
