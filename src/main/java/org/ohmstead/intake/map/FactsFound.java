package org.ohmstead.intake.map;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.file.Cell;
import org.ohmstead.intake.file.Fact;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.Findings;
import org.ohmstead.intake.file.Row;
import org.ohmstead.intake.file.Spelling;
import org.ohmstead.intake.file.Unit;

/** Finds the facts of a survey in the lines round its tables, and rewrites them as a survey sheet has them. */
final class FactsFound {

    private final ColumnMap map;
    private final MapNumbers numbers;
    private final Findings findings;
    private final List<String> labels;
    private @Nullable DateTimeFormatter pattern;

    FactsFound(ColumnMap map, MapNumbers numbers, Findings findings) {
        this.map = map;
        this.labels = map.facts().stream().map(rule -> bare(rule.label())).toList();
        this.numbers = numbers;
        this.findings = findings;
    }

    /** Key and value, as a survey sheet's line. */
    record Found(String fact, Row line) {}

    /** Those that the map gives itself. */
    List<Found> given() {
        List<Found> given = new ArrayList<>();
        for (FactRule rule : map.facts()) {
            if (!rule.value().isEmpty()) {
                found(rule.fact(), rule.unit(), new Cell(0, 0, rule.value())).ifPresent(given::add);
            }
        }
        return given;
    }

    /** Those whose labels stand in the row: the value in the same cell after a colon, or in the next one that is filled. */
    List<Found> in(Row row) {
        List<Found> all = new ArrayList<>();
        for (int number = 1; number <= row.cells().size(); number++) {
            String text = row.cell(number).text();
            int colon = text.indexOf(':');
            String whole = bare(text);
            String before = colon > 0 ? bare(text.substring(0, colon)) : whole;
            for (int i = 0; i < labels.size() && !whole.isEmpty(); i++) {
                FactRule rule = map.facts().get(i);
                if (!rule.label().isEmpty() && (whole.equals(labels.get(i)) || before.equals(labels.get(i)))) {
                    value(row, number, whole.equals(labels.get(i)))
                            .flatMap(value -> found(rule.fact(), rule.unit(), value))
                            .ifPresent(all::add);
                }
            }
        }
        return all;
    }

    private static Optional<Cell> value(Row row, int number, boolean inNextCell) {
        Cell cell = row.cell(number);
        return inNextCell
                ? Optional.ofNullable(row.firstFilledAfter(number))
                : Optional.of(cell.saying(Spelling.trimmed(
                                cell.text().substring(cell.text().indexOf(':') + 1))))
                        .filter(value -> !value.isEmpty());
    }

    static String bare(String label) {
        String plain = Spelling.plain(label);
        int end = plain.length();
        while (end > 0 && " :=".indexOf(plain.charAt(end - 1)) >= 0) {
            end--;
        }
        return plain.substring(0, end);
    }

    Optional<Found> found(String key, String unit, Cell value) {
        Optional<Fact> fact = Holds.fact(key);
        if (fact.isEmpty() || value.isEmpty()) {
            return Optional.empty();
        }
        Unit kept = fact.get().kept();
        if (kept != null) {
            return numbers.read(value, Unit.named(unit), written -> kept)
                    .map(number -> line(key, key + " " + kept.sign(), number.cell()));
        }
        boolean dated = fact.get() == Fact.TAKEN_AT || fact.get() == Fact.CALIBRATION_DUE;
        return Optional.of(line(key, key, dated ? time(value) : value));
    }

    private static Found line(String fact, String key, Cell value) {
        return new Found(fact, new Row(value.sheet(), value.line(), List.of(value.saying(key), value)));
    }

    /** Year first, whatever the map's pattern; a text that does not follow the pattern stays, and is found later. */
    private Cell time(Cell value) {
        if (map.timePattern().isEmpty()) {
            return value;
        }
        try {
            DateTimeFormatter known = pattern;
            if (known == null) {
                known = DateTimeFormatter.ofPattern(map.timePattern(), Locale.ROOT);
                pattern = known;
            }
            TemporalAccessor read = known.parseBest(value.text(), LocalDateTime::from, LocalDate::from);
            return value.saying(read.toString());
        } catch (DateTimeException | IllegalArgumentException notSo) {
            findings.add(Finding.noted(
                    value,
                    "This does not follow the column map's pattern of times.",
                    "The pattern is " + map.timePattern()));
            return value;
        }
    }
}
