package org.ohmstead.fleet.csv;

import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.Partial;

/**
 * One kind of register file: its columns, and how a row becomes an entry and an entry a row.
 *
 * @param name as in the file's name, plural
 * @param one what a single entry is called
 * @param key the columns by which an entry is known again
 */
public record Sheet<E>(
        String name,
        String one,
        List<Column<E, ?>> columns,
        List<Column<E, ?>> key,
        List<Rule<E>> rules,
        Function<Values<E>, E> assemble) {

    /** Everything that is wrong in the row, or its entry. */
    public Partial<E> read(TextRow row) {
        List<Flaw> flaws = new ArrayList<>();
        Map<String, Object> values = new HashMap<>();
        for (Column<E, ?> column : columns) {
            readCell(row, column, values, flaws);
        }
        if (!flaws.isEmpty()) {
            return new Partial<>(List.of(), flaws);
        }
        E entry = assemble.apply(new Values<>(values));
        List<Flaw> breaches = breaches(row, entry);
        return breaches.isEmpty() ? new Partial<>(List.of(entry), List.of()) : new Partial<>(List.of(), breaches);
    }

    /** The entry as its own written form reads back: the one set of rules for files, pages and programs alike. */
    public Partial<E> check(E entry) {
        return read(new TextRow(0, cells(entry)));
    }

    /** Text by header, in the order of the columns. */
    public Map<String, String> cells(E entry) {
        Map<String, String> cells = new LinkedHashMap<>();
        columns.forEach(column -> cells.put(column.header(), column.textOf(entry)));
        return cells;
    }

    /** What tells entries apart, readable. */
    public String keyOf(E entry) {
        return key.stream().map(column -> column.textOf(entry)).collect(Collectors.joining(" / "));
    }

    /** The key of a row not yet read; such a row may still be flawed. */
    public String keyOf(TextRow row) {
        return key.stream()
                .map(column -> row.cells().getOrDefault(column.header(), "").strip())
                .collect(Collectors.joining(" / "));
    }

    public List<String> headers() {
        return columns.stream().map(Column::header).toList();
    }

    /** Counted from 1; 0 when there is no such column. */
    public int columnNumber(String header) {
        return headers().indexOf(header) + 1;
    }

    private void readCell(TextRow row, Column<E, ?> column, Map<String, Object> values, List<Flaw> flaws) {
        String text = row.cells().getOrDefault(column.header(), "").strip();
        if (text.isEmpty() && column.required()) {
            flaws.add(flaw(row, column.header(), null, column.header() + " is missing.", remedy(column)));
        } else if (!text.isEmpty()) {
            try {
                values.put(column.header(), column.cell().reading().apply(text));
            } catch (IllegalArgumentException | DateTimeException e) {
                flaws.add(flaw(row, column.header(), text, column.header() + " cannot be read.", remedy(column)));
            }
        }
    }

    private static String remedy(Column<?, ?> column) {
        return "Write " + column.cell().wanted() + ".";
    }

    private List<Flaw> breaches(TextRow row, E entry) {
        return rules.stream()
                .filter(rule -> !rule.holds().test(entry, row.cells()))
                .map(rule -> flaw(row, rule.header(), row.cells().get(rule.header()), rule.message(), rule.remedy()))
                .toList();
    }

    private Flaw flaw(TextRow row, String header, @Nullable String value, String message, String remedy) {
        int column = List.copyOf(row.cells().keySet()).indexOf(header) + 1;
        return new Flaw(row.line(), column, value == null || value.isEmpty() ? null : value, message, remedy);
    }
}
