package org.ohmstead.intake.file;

import org.ohmstead.kernel.Flaw;

/** What the reader had to say about a place in the file, and how much it costs. */
public record Finding(Weight weight, Flaw flaw) {

    public static Finding unreadable(Flaw flaw) {
        return new Finding(Weight.UNREADABLE, flaw);
    }

    public static Finding lost(Cell cell, String message, String remedy) {
        return new Finding(Weight.VALUE_LOST, cell.flaw(message, remedy));
    }

    public static Finding noted(Cell cell, String message, String remedy) {
        return new Finding(Weight.NOTED, cell.flaw(message, remedy));
    }
}
