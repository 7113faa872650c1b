package org.ohmstead.intake.file;

import org.ohmstead.kernel.Flaw;

/**
 * One field of the file with its place.
 *
 * @param line counted from 1
 * @param column counted from 1, in fields
 * @param text without surrounding blanks
 */
record Cell(int line, int column, String text) {

    private static final int SHOWN = 80;

    boolean isEmpty() {
        return text.isEmpty();
    }

    Flaw flaw(String message, String remedy) {
        String shown = text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
        return new Flaw(line, column, shown, message, remedy);
    }
}
