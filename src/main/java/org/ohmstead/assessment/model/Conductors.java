package org.ohmstead.assessment.model;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.ohmstead.kernel.Conductor;

/**
 * A cable's own resistance, from the tables in {@code conductors.csv} (sources there and in {@code docs/assessment.md}).
 * Table values are maxima: what is left of a link's reading after taking them out may come out too small, even negative.
 */
public final class Conductors {

    private static final Map<String, Row> TABLE = load();
    private static final double MICROOHMS_PER_OHM = 1e6;

    private Conductors() {}

    /** The sizes that have a table value, as the register writes them. */
    public static List<String> sizes() {
        return TABLE.keySet().stream()
                .map(key -> key.split("/class")[0])
                .distinct()
                .toList();
    }

    /** Whether the table has this conductor's size and class. */
    public static boolean knows(Conductor conductor) {
        return TABLE.containsKey(key(conductor));
    }

    /** In microohms at the temperature; NaN for a size the table does not have, or without a temperature. */
    public static double microohms(Conductor conductor, double celsius) {
        Row row = TABLE.get(key(conductor));
        if (row == null) {
            return Double.NaN;
        }
        double ohmsPerMetre = row.ohms / row.perMetres * row.warmth(celsius) / row.warmth(row.atCelsius);
        return MICROOHMS_PER_OHM * ohmsPerMetre * conductor.lengthMetres() / conductor.inParallel();
    }

    private static String key(Conductor conductor) {
        String size = normal(conductor.size());
        return isAmerican(size)
                ? size
                : size + "/class" + (conductor.flexibility().ordinal() == 0 ? 2 : 5);
    }

    private static String normal(String size) {
        String plain = size.replaceAll("(?i)\\s*mm(²|2)?\\s*$", "").trim().replaceAll("\\s+", " ");
        return isAmerican(plain)
                ? plain.toUpperCase(Locale.ROOT)
                        .replaceAll("\\s*(AWG|KCMIL)$", " $1")
                        .replace("KCMIL", "kcmil")
                : plain;
    }

    private static boolean isAmerican(String size) {
        String upper = size.toUpperCase(Locale.ROOT);
        return upper.endsWith("AWG") || upper.endsWith("KCMIL");
    }

    private static Map<String, Row> load() {
        try (InputStream in = Objects.requireNonNull(Conductors.class.getResourceAsStream("conductors.csv"));
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("size,"))
                    .map(line -> line.split(",", -1))
                    .collect(Collectors.toMap(Conductors::keyOf, Row::of, (one, other) -> one, LinkedHashMap::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String keyOf(String[] cells) {
        return cells[1].isEmpty() ? cells[0] : cells[0] + "/class" + cells[1];
    }

    private record Row(double ohms, double perMetres, double atCelsius, double perKelvin) {

        static final double TABLE_CELSIUS = 20;

        static Row of(String[] cells) {
            return new Row(
                    Double.parseDouble(cells[2]),
                    Double.parseDouble(cells[3]),
                    Double.parseDouble(cells[4]),
                    Double.parseDouble(cells[5]));
        }

        double warmth(double celsius) {
            return 1 + perKelvin * (celsius - TABLE_CELSIUS);
        }
    }
}
