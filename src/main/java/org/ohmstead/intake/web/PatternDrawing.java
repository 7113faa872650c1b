package org.ohmstead.intake.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.BenchLine;
import org.ohmstead.intake.MovedPlace;

/**
 * The survey's ohmic values along the string, over the string's own pattern, as points of two lines in a box of
 * {@value #WIDTH} by {@value #HEIGHT}.
 *
 * @param read lines of the survey, parted where jars were not measured
 * @param expected the pattern's line; empty when none is known
 */
record PatternDrawing(List<String> read, List<String> expected) {

    static final int WIDTH = 640;
    static final int HEIGHT = 120;
    private static final int EDGE = 8;

    static PatternDrawing of(List<BenchLine> lines) {
        List<@Nullable Double> read = new ArrayList<>();
        lines.stream().skip(1).forEach(line -> read.add(line.ohmic()));
        return drawn(read, lines);
    }

    static PatternDrawing after(List<BenchLine> lines, List<MovedPlace> moved) {
        Map<Integer, MovedPlace> byPosition = new HashMap<>();
        moved.forEach(place -> byPosition.put(place.position(), place));
        List<@Nullable Double> read = new ArrayList<>();
        lines.stream().skip(1).forEach(line -> {
            MovedPlace place = byPosition.get(line.position());
            read.add(place == null ? line.ohmic() : place.ohmicThen());
        });
        return drawn(read, lines);
    }

    /** Whether there is a pattern to compare with. */
    public boolean isTelling() {
        return !expected.isEmpty();
    }

    private static PatternDrawing drawn(List<@Nullable Double> read, List<BenchLine> lines) {
        List<@Nullable Double> expected = new ArrayList<>();
        lines.stream().skip(1).forEach(line -> expected.add(line.ohmicExpected()));
        List<Double> all = new ArrayList<>();
        read.stream().filter(value -> value != null).forEach(all::add);
        expected.stream().filter(value -> value != null).forEach(all::add);
        double least = all.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double most = all.stream().mapToDouble(Double::doubleValue).max().orElse(1);
        Scale scale = new Scale(least, most > least ? most : least + 1, Math.max(1, read.size() - 1));
        return new PatternDrawing(scale.lines(read), scale.lines(expected));
    }

    private record Scale(double least, double most, int steps) {

        List<String> lines(List<@Nullable Double> values) {
            List<String> lines = new ArrayList<>();
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < values.size(); i++) {
                Double value = values.get(i);
                if (value == null) {
                    end(line, lines);
                } else {
                    line.append(point(i, value)).append(' ');
                }
            }
            end(line, lines);
            return lines;
        }

        private static void end(StringBuilder line, List<String> lines) {
            if (!line.isEmpty()) {
                lines.add(line.toString().strip());
                line.setLength(0);
            }
        }

        private String point(int index, double value) {
            double x = EDGE + (WIDTH - 2.0 * EDGE) * index / steps;
            double y = HEIGHT - EDGE - (HEIGHT - 2.0 * EDGE) * (value - least) / (most - least);
            return String.format(Locale.ROOT, "%.1f,%.1f", x, y);
        }
    }
}
