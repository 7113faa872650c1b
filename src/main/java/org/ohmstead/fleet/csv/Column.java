package org.ohmstead.fleet.csv;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A column of a register file.
 *
 * @param header as it stands in the first line, with the unit where there is one
 * @param label what people call it
 * @param unit as shown beside a value, or empty
 * @param help one sentence for the person who fills it in, or empty
 * @param of takes the value out of an entry
 */
public record Column<E, V>(
        String header,
        String label,
        String unit,
        boolean required,
        Cell<V> cell,
        String help,
        Function<E, @Nullable V> of) {

    static <E, V> Column<E, V> required(String header, String label, Cell<V> cell, Function<E, @Nullable V> of) {
        return new Column<>(header, label, "", true, cell, "", of);
    }

    static <E, V> Column<E, V> optional(String header, String label, Cell<V> cell, Function<E, @Nullable V> of) {
        return new Column<>(header, label, "", false, cell, "", of);
    }

    Column<E, V> in(String unit) {
        return new Column<>(header, label, unit, required, cell, help, of);
    }

    Column<E, V> saying(String help) {
        return new Column<>(header, label, unit, required, cell, help, of);
    }

    /** The cell's text for an entry, empty when there is nothing to say; not yet guarded against formulas. */
    public String textOf(E entry) {
        V value = of.apply(entry);
        return value == null ? "" : cell.writing().apply(value);
    }
}
