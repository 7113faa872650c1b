package org.ohmstead.intake.history;

/**
 * A file of a history, or one of the sheets of a long file.
 *
 * @param name with its folders; only ever shown
 */
record Piece(String name, byte[] bytes) {

    private static final int LONGEST_NAME = 200;

    Piece {
        String clean = name.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}\"]", "").strip();
        name = clean.isEmpty() ? "survey" : clean.substring(Math.max(0, clean.length() - LONGEST_NAME));
    }
}
