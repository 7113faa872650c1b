package org.ohmstead.intake.file;

/** Takes the lines of a file one by one. */
@FunctionalInterface
public interface RowSink {

    /** @return false when no more is wanted */
    boolean accept(Row row);
}
