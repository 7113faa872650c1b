package org.ohmstead.intake;

/** Something that a later module has to say on a receipt: the string's new assessment. */
public interface ReceiptAddition {

    /** The key it stands under. */
    String key();

    /** What it has to say of the string, as a record that can be written as JSON. */
    Object of(long stringId);
}
