package org.ohmstead.kernel;

import org.jspecify.annotations.Nullable;

/**
 * Something wrong in a file, with its place and its remedy.
 *
 * @param line counted from 1; 0 when the flaw concerns the file as a whole
 * @param column counted from 1, in fields of the line; 0 when the flaw concerns the line as a whole
 * @param value the offending text as it stood in the file, if there was one
 * @param message what is wrong, one sentence
 * @param remedy what to do about it, one sentence
 */
public record Flaw(int line, int column, @Nullable String value, String message, String remedy) {

    public static Flaw ofFile(String message, String remedy) {
        return new Flaw(0, 0, null, message, remedy);
    }

    public static Flaw ofLine(int line, String message, String remedy) {
        return new Flaw(line, 0, null, message, remedy);
    }

    /** "line 12, column 3" or "line 12" or "the file". */
    public String place() {
        if (line == 0) {
            return "the file";
        }
        return column == 0 ? "line " + line : "line " + line + ", column " + column;
    }

    @Override
    public String toString() {
        return place() + ": " + message + (value == null ? "" : " (\"" + value + "\")") + " " + remedy;
    }
}
