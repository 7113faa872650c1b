package org.ohmstead.statistics;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/** A small data set under {@code reference/}, read column by column. */
record Table(List<NamedCsvRecord> rows) {

    static Table read(String file) {
        try (InputStream in = Objects.requireNonNull(Table.class.getResourceAsStream("/reference/" + file), file);
                CsvReader<NamedCsvRecord> reader =
                        CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return new Table(reader.stream().toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Table where(String column, String word) {
        return new Table(
                rows.stream().filter(row -> row.getField(column).equals(word)).toList());
    }

    String[] words(String column) {
        return rows.stream().map(row -> row.getField(column)).toArray(String[]::new);
    }

    double[] numbers(String column) {
        return rows.stream()
                .map(row -> row.getField(column))
                .mapToDouble(Table::number)
                .toArray();
    }

    /** The words of a column numbered from 0 in the order of their first appearance. */
    int[] codes(String column) {
        Map<String, Integer> seen = codesOf(column);
        return Stream.of(words(column)).mapToInt(seen::get).toArray();
    }

    Map<String, Integer> codesOf(String column) {
        Map<String, Integer> seen = new LinkedHashMap<>();
        for (String word : words(column)) {
            seen.putIfAbsent(word, seen.size());
        }
        return seen;
    }

    private static double number(String field) {
        return field.isEmpty() ? Double.NaN : Double.parseDouble(field);
    }
}
