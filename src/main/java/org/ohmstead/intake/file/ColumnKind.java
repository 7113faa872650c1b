package org.ohmstead.intake.file;

/** What a column of readings holds. */
public enum ColumnKind {
    POSITION,
    JAR_OHMIC,
    JAR_VOLTS,
    JAR_CELSIUS,
    JAR_GRAVITY,
    LINK
}
