package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertAll;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.function.Executable;

/**
 * The published or independently computed numbers of {@code reference/values.csv} and {@code nist_values.csv}, each row
 * with its source. A set is checked as a whole: a row that nobody computed fails the test.
 */
record Reference(String id, List<Row> rows) {

    static Reference set(String id) {
        return read("values.csv", "value", id);
    }

    static Reference nist(String id) {
        return read("nist_values.csv", "exact_rational_value", id);
    }

    private static Reference read(String file, String column, String id) {
        Table table = Table.read(file).where("id", id);
        String[] quantities = table.words("quantity");
        double[] values = table.numbers(column);
        String[] sources = table.words("source");
        assertThat(quantities).as("rows of %s in %s", id, file).isNotEmpty();
        List<Row> rows = IntStream.range(0, values.length)
                .mapToObj(i -> new Row(quantities[i], values[i], sources[i]))
                .toList();
        return new Reference(id, rows);
    }

    /** Every row must be met within the relative tolerance, zeros within it absolutely. */
    void agreesWith(Map<String, Double> computed, double tolerance) {
        agreesWith(computed, tolerance, 0);
    }

    /** The same, numbers smaller than the scale being judged against the scale. */
    void agreesWith(Map<String, Double> computed, double tolerance, double scale) {
        assertAll(id, rows.stream().map(row -> row.check(id, computed, tolerance, scale)));
    }

    /** The one number of that name. */
    double value(String quantity) {
        return rows.stream()
                .filter(row -> row.quantity().equals(quantity))
                .mapToDouble(Row::value)
                .findFirst()
                .orElseThrow();
    }

    record Row(String quantity, double value, String source) {

        Executable check(String id, Map<String, Double> computed, double tolerance, double scale) {
            return () -> {
                assertThat(computed).as("what was computed for %s", id).containsKey(quantity);
                double actual = computed.get(quantity);
                double size = value == 0 ? 1 : Math.max(Math.abs(value), scale);
                double apart = Math.abs(actual - value) / size;
                boolean same = Double.isNaN(value) ? Double.isNaN(actual) : apart <= tolerance;
                assertThat(same)
                        .as("%s %s: %s by %s, computed %s", id, quantity, value, source, actual)
                        .isTrue();
            };
        }
    }
}
