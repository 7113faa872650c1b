package org.ohmstead.intake.file;

/**
 * How a text file parts its cells.
 *
 * @param quote the sign that may stand round a cell; NUL for none
 */
public record Dialect(char delimiter, char quote) {

    public static Dialect delimitedBy(char delimiter) {
        return new Dialect(delimiter, '"');
    }
}
