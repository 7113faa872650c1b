package org.ohmstead.intake.file;

import org.ohmstead.kernel.Flaw;

/**
 * One field of the file with its place.
 *
 * @param sheet name of its worksheet; empty when the file has no worksheets
 * @param line counted from 1
 * @param column counted from 1, in fields; in JSON in characters
 * @param text without surrounding blanks
 */
public record Cell(String sheet, int line, int column, String text) {

    private static final int SHOWN = 80;

    public Cell(int line, int column, String text) {
        this("", line, column, text);
    }

    public boolean isEmpty() {
        return text.isEmpty();
    }

    /** The same place with another text. */
    public Cell saying(String other) {
        return new Cell(sheet, line, column, other);
    }

    public Flaw flaw(String message, String remedy) {
        String shown = text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
        String where = sheet.isEmpty() ? "" : "Worksheet \"" + sheet + "\": ";
        return new Flaw(line, column, shown, where + message, remedy);
    }
}
