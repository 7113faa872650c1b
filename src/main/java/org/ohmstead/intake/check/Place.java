package org.ohmstead.intake.check;

/**
 * Where a remark points.
 *
 * @param words as people say it: "jars 3, 7–9", "ripple current"
 * @param line of the file, counted from 1; 0 when it points at no line
 * @param column counted from 1; 0 when it points at no column
 */
public record Place(String words, int line, int column) {

    public static final Place FILE = new Place("the file", 0, 0);
}
