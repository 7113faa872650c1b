package org.ohmstead.intake.file;

import java.util.List;

/**
 * A value of a JSON text with its place.
 *
 * @param text of a number, word or yes/no; empty for what has parts, and for null
 * @param keys of an object's parts; empty for an array
 */
record JsonNode(Shape shape, int line, int column, String text, List<String> keys, List<JsonNode> parts) {

    enum Shape {
        VALUE,
        OBJECT,
        ARRAY
    }

    boolean isValue() {
        return shape == Shape.VALUE;
    }

    /** An array with objects or arrays in it: rows. */
    boolean isTable() {
        return shape == Shape.ARRAY && parts.stream().anyMatch(part -> !part.isValue());
    }

    /** An object that holds rows of its own. */
    boolean isBlock() {
        return shape == Shape.OBJECT && parts.stream().anyMatch(part -> part.isTable() || part.isBlock());
    }

    Cell cell() {
        return new Cell(line, column, Spelling.trimmed(text));
    }

    Cell saying(String words) {
        return new Cell(line, column, Spelling.trimmed(words));
    }
}
