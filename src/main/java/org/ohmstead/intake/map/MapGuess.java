package org.ohmstead.intake.map;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.Cell;
import org.ohmstead.intake.file.Dialect;
import org.ohmstead.intake.file.FileRows;
import org.ohmstead.intake.file.Findings;
import org.ohmstead.intake.file.Row;

/** Guesses a column map from the first lines of a sample: from titles, units and the values below them. */
public final class MapGuess {

    private static final int LOOKED_AT = 120;
    private static final String DELIMITERS = ";\t|,";

    private final List<Row> rows = new ArrayList<>();
    private String delimiter = ",";

    private MapGuess() {}

    public static ColumnMap of(ByteSource source) throws IOException {
        MapGuess guess = new MapGuess();
        FileRows.read(source, guess::dialect, null, guess::accept, new Findings());
        return guess.map();
    }

    /** The sign that stands most often, the rarer ones in text first. */
    private Dialect dialect(String start) {
        long most = 0;
        for (char sign : DELIMITERS.toCharArray()) {
            long count = start.chars().filter(letter -> letter == sign).count();
            if (count > most) {
                most = count;
                delimiter = String.valueOf(sign);
            }
        }
        return Dialect.delimitedBy(delimiter.charAt(0));
    }

    private boolean accept(Row row) {
        rows.add(row);
        return rows.size() < LOOKED_AT;
    }

    private ColumnMap map() {
        Map<String, ColumnRule> columns = new LinkedHashMap<>();
        List<FactRule> facts = new ArrayList<>();
        boolean table = false;
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            if (isTitles(row, i)) {
                columnsOf(row, i).forEach(rule -> columns.putIfAbsent(rule.title(), rule));
                table = true;
            } else if (!table) {
                facts.addAll(GuessedWords.facts(row));
            }
        }
        facts.add(new FactRule("ohmic kind", "", kind(columns.values()), ""));
        String mark = decimalMark();
        return new ColumnMap(
                delimiter,
                "\"",
                "",
                mark,
                "",
                timePattern(),
                facts,
                List.copyOf(columns.values()),
                List.of(),
                false,
                false,
                List.of());
    }

    private static String kind(Iterable<ColumnRule> columns) {
        for (ColumnRule rule : columns) {
            if (rule.holds().equals(Holds.JAR_OHMIC)) {
                String title = FactsFound.bare(rule.title());
                boolean resistance = title.contains("resist") || title.startsWith("r ");
                return rule.unit().endsWith("S") ? "conductance" : resistance ? "resistance" : "impedance";
            }
        }
        return "impedance";
    }

    /** Words over numbers: two or more filled cells without a digit at their start, then a row that begins with a place. */
    private boolean isTitles(Row row, int at) {
        long words = row.cells().stream()
                .filter(cell -> !cell.isEmpty() && !GuessedWords.isNumber(cell.text()))
                .count();
        boolean numbers = row.cells().stream().anyMatch(cell -> GuessedWords.isNumber(cell.text()));
        return words >= 2 && !numbers && at + 1 < rows.size() && hasPlace(rows.get(at + 1));
    }

    private static boolean hasPlace(Row row) {
        long numbers = row.cells().stream()
                .filter(cell -> GuessedWords.isNumber(cell.text()))
                .count();
        Cell first = row.firstFilledAfter(0);
        return numbers >= 1
                && first != null
                && (numbers >= 2 || PlaceText.read(first.text()).isPresent());
    }

    private List<ColumnRule> columnsOf(Row titles, int at) {
        List<ColumnRule> guessed = new ArrayList<>();
        for (int number = 1; number <= titles.cells().size(); number++) {
            Cell title = titles.cell(number);
            if (!title.isEmpty()) {
                GuessedWords.column(title.text(), values(number, at), guessed).ifPresent(guessed::add);
            }
        }
        return guessed;
    }

    private List<String> values(int number, int titlesAt) {
        return rows.subList(titlesAt + 1, Math.min(rows.size(), titlesAt + 20)).stream()
                .map(row -> row.cell(number).text())
                .filter(text -> !text.isEmpty())
                .toList();
    }

    /** A comma, where numbers with commas outnumber those with points. */
    private String decimalMark() {
        int commas = 0;
        int points = 0;
        for (Row row : rows) {
            for (Cell cell : row.cells()) {
                commas += cell.text().matches("-?\\d+,\\d+( ?\\D*)?") ? 1 : 0;
                points += cell.text().matches("-?\\d+\\.\\d+( ?\\D*)?") ? 1 : 0;
            }
        }
        return commas > points ? "," : ".";
    }

    private String timePattern() {
        for (Row row : rows) {
            for (Cell cell : row.cells()) {
                Optional<String> pattern = GuessedWords.timePattern(cell.text());
                if (pattern.isPresent()) {
                    return pattern.get();
                }
            }
        }
        return "";
    }
}
