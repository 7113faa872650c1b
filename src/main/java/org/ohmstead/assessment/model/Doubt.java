package org.ohmstead.assessment.model;

/** Something that makes a judgement less certain, in words with numbers. */
public record Doubt(Kind kind, String words) {

    /** What a doubt is about. */
    public enum Kind {
        NO_SURVEY,
        OFF_FLOAT,
        OTHER_OHMIC_KIND,
        OTHER_INSTRUMENT,
        TEMPERATURE_OFF_BASELINE,
        TEMPERATURE_UNKNOWN,
        SURVEY_SHIFT,
        BASELINE_PROVISIONAL,
        BASELINE_LATE,
        BASELINE_MISSING,
        REFERENCE_UNFIT,
        CABLE_UNKNOWN,
        CABLE_DOMINATES,
        STRAPS_MISSING,
        READ_APART,
        RENEWED_WITHOUT_RECORD,
        INSTRUMENT_OFF
    }
}
