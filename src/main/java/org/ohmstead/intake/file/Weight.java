package org.ohmstead.intake.file;

/** How much a finding of the reader costs. */
public enum Weight {
    /** A doubtful form was read by its written rule; nothing is lost. */
    NOTED,
    /** A value could not be read and is left out. */
    VALUE_LOST,
    /** The sheet, or the whole file, cannot be read as a survey. */
    UNREADABLE
}
