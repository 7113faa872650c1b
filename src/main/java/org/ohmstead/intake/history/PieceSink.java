package org.ohmstead.intake.history;

/** Takes the pieces of a history one by one. */
@FunctionalInterface
interface PieceSink {

    void accept(Piece piece);
}
