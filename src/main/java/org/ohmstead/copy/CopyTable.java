package org.ohmstead.copy;

import static java.util.stream.Collectors.joining;

import java.util.List;
import org.springframework.jdbc.core.JdbcTemplate;

/** A table that takes values of one type, with all the columns that are written. */
public record CopyTable<T>(String name, List<CopyColumn<T>> columns) {

    public CopyTable {
        columns = List.copyOf(columns);
    }

    /** In the transaction that is under way. */
    public void append(JdbcTemplate jdbc, List<T> values) {
        if (!values.isEmpty()) {
            String into = name + columns.stream().map(CopyColumn::name).collect(joining(", ", " (", ")"));
            BinaryCopy.write(jdbc, into, values, this::write);
        }
    }

    private void write(T value, WireBuffer out) {
        out.putShort(columns.size());
        for (CopyColumn<T> column : columns) {
            column.write().write(value, out);
        }
    }
}
