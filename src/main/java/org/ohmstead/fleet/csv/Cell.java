package org.ohmstead.fleet.csv;

import java.util.List;
import java.util.function.Function;

/**
 * What may stand in a cell.
 *
 * @param sort how the cell is treated beyond its own rules
 * @param wanted what is accepted, to complete the sentence "Write ..."
 * @param choices all valid values where they are few, else empty
 * @param reading throws an {@link IllegalArgumentException} or {@link java.time.DateTimeException} when the text is not
 *     what is wanted
 */
public record Cell<V>(
        Sort sort, String wanted, List<String> choices, Function<String, V> reading, Function<V, String> writing) {

    /** Free text is guarded against formula injection, numbers may carry a decimal comma in semicolon files. */
    public enum Sort {
        TEXT,
        LONG_TEXT,
        NUMBER,
        DATE,
        WORD
    }

    public boolean isText() {
        return sort == Sort.TEXT || sort == Sort.LONG_TEXT;
    }
}
