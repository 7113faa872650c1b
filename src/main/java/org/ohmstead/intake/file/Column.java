package org.ohmstead.intake.file;

import org.jspecify.annotations.Nullable;

/**
 * One column of readings.
 *
 * @param number of the cell in its row, counted from 1
 * @param shown the column as people are told of it
 * @param strap counted from 1, for link columns; 0 otherwise
 * @param written unit of the file; null for positions
 * @param kept unit of the readings; null for positions
 */
record Column(
        int number,
        int shown,
        ColumnKind kind,
        int strap,
        @Nullable Unit written,
        @Nullable Unit kept) {

    boolean isSameAs(Column other) {
        return kind == other.kind && strap == other.strap;
    }
}
