package org.ohmstead.assessment.model;

/** The practitioner's rules and those on the forecast, by name. {@code docs/assessment.md} has the table of what each asks for. */
public enum Rule {
    JAR_OVER_BASELINE,
    JAR_UNDER_BASELINE,
    JAR_OVER_LOT,
    JAR_STEP,
    JAR_VOLTS_LOW,
    JAR_VOLTS_OFF_MEDIAN,
    JAR_HOT,
    JAR_NOT_READ,
    LINK_OVER_BASELINE,
    LINK_OVER_KIND,
    LINK_INSTALLATION,
    LINK_DROP,
    LINK_NOT_READ,
    JAR_RISK,
    JAR_READ_APART,
    LINK_RISK,
    LINK_READ_APART,
    STRING_RISEN,
    STRING_FLOAT,
    STRING_TEMPERATURE_SPREAD,
    STRING_RIPPLE,
    STRING_AGE,
    STRING_DROP,
    STRING_UNSURVEYED
}
