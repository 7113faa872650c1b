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

    FactsFound(ColumnMap map, MapNumbers numbers, Findings findings) {
        this.map = map;
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
            Cell cell = row.cell(number);
            for (FactRule rule : map.facts()) {
                if (!rule.label().isEmpty() && !cell.isEmpty()) {
                    value(row, number, rule.label())
                            .flatMap(value -> found(rule.fact(), rule.unit(), value))
                            .ifPresent(all::add);
                }
            }
        }
        return all;
    }

    private static Optional<Cell> value(Row row, int number, String label) {
        Cell cell = row.cell(number);
        if (bare(cell.text()).equals(bare(label))) {
            return Optional.ofNullable(row.firstFilledAfter(number));
        }
        int colon = cell.text().indexOf(':');
        boolean same = colon > 0 && bare(cell.text().substring(0, colon)).equals(bare(label));
        return same
                ? Optional.of(cell.saying(Spelling.trimmed(cell.text().substring(colon + 1))))
                        .filter(value -> !value.isEmpty())
                : Optional.empty();
    }

    static String bare(String label) {
        return Spelling.plain(label).replaceFirst("[ :=]+$", "");
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
            DateTimeFormatter pattern = DateTimeFormatter.ofPattern(map.timePattern(), Locale.ROOT);
            TemporalAccessor read = pattern.parseBest(value.text(), LocalDateTime::from, LocalDate::from);
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
