package org.ohmstead.fleet.csv;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The values of one row whose every cell was read. */
final class Values<E> {

    private final Map<String, Object> byHeader;

    Values(Map<String, Object> byHeader) {
        this.byHeader = byHeader;
    }

    /** For required columns, whose absence has already been reported. */
    <V> V of(Column<E, V> column) {
        V value = orNull(column);
        if (value == null) {
            throw new IllegalStateException("No value for the required column " + column.header());
        }
        return value;
    }

    <V> V or(Column<E, V> column, V otherwise) {
        V value = orNull(column);
        return value == null ? otherwise : value;
    }

    /** Safe because only the column's own cell puts values under its header. */
    @SuppressWarnings("unchecked")
    <V> @Nullable V orNull(Column<E, V> column) {
        return (V) byHeader.get(column.header());
    }
}
