package org.ohmstead.intake;

/** How far a file came on its way in. */
public enum Stage {
    /** Its bytes are kept. */
    RECEIVED,
    /** It could be read as a survey sheet. */
    READ,
    /** Its string was found in the register. */
    MATCHED,
    /** It was laid out along the string and looked at. */
    CHECKED
}
