package org.ohmstead.intake.map;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.ohmstead.intake.file.Cell;
import org.ohmstead.intake.file.Row;
import org.ohmstead.intake.file.SheetParser;
import org.ohmstead.intake.file.SurveySheet;

/** One survey as it is put together from a table; at its end it is read like any survey sheet. */
final class Gathered {

    /** How often one place may be told of; the first one counts, and after so many nobody needs to hear of more. */
    private static final int MOST_TOLD = 20;

    private static final String REMEDY = "Let the column map say where it stands, or give it in the map.";

    private final Map<String, Row> facts = new LinkedHashMap<>();
    private final Map<Integer, List<Map<String, Cell>>> rows = new TreeMap<>();
    private final Set<String> titles = new LinkedHashSet<>();
    private final int line;

    Gathered(int line) {
        this.line = line;
    }

    boolean hasReadings() {
        return !rows.isEmpty();
    }

    /** A fact, as key and value of a survey sheet; the first one stands. */
    void fact(String fact, Row row) {
        facts.putIfAbsent(fact, row);
    }

    String text(String fact) {
        Row row = facts.get(fact);
        return row == null ? "" : row.cell(2).text();
    }

    /** A reading; a second one of the same kind at the same place makes a second row, which is found later. */
    void reading(int ordinal, String title, Cell cell) {
        titles.add(title);
        List<Map<String, Cell>> places = rows.computeIfAbsent(ordinal, fresh -> new ArrayList<>());
        for (Map<String, Cell> place : places) {
            if (place.putIfAbsent(title, cell) == null) {
                return;
            }
        }
        if (places.size() < MOST_TOLD) {
            Map<String, Cell> another = new LinkedHashMap<>();
            another.put(title, cell);
            places.add(another);
        }
    }

    /** What words of this survey also hold for the next one of the same file; measured facts don't. */
    void handOn(Gathered next) {
        for (String fact : List.of("site", "taken by", "instrument", "instrument calibration due", "ohmic kind")) {
            Row row = facts.get(fact);
            if (row != null) {
                next.fact(fact, row);
            }
        }
    }

    SurveySheet sheet() {
        placeLast();
        SheetParser parser = new SheetParser(line, false, REMEDY);
        facts.values().forEach(parser::accept);
        if (!rows.isEmpty()) {
            parser.accept(titleRow());
            rows.forEach((ordinal, places) -> places.forEach(place -> parser.accept(row(ordinal, place))));
        }
        return parser.finish();
    }

    /** The negative terminal link belongs to the last jar, which is known only now. */
    private void placeLast() {
        List<Map<String, Cell>> last = rows.remove(PlaceText.LAST);
        if (last != null) {
            int ordinal = rows.keySet().stream().mapToInt(at -> at).max().orElse(0);
            last.forEach(place -> place.forEach((title, cell) -> reading(ordinal, title, cell)));
        }
    }

    private Row titleRow() {
        List<Cell> cells = new ArrayList<>(List.of(new Cell("", line, 0, "position")));
        for (String title : titles) {
            Cell sample = rows.values().stream()
                    .flatMap(List::stream)
                    .filter(place -> place.containsKey(title))
                    .map(place -> place.get(title))
                    .findFirst()
                    .orElseThrow();
            cells.add(sample.saying(title));
        }
        return new Row("", line, cells);
    }

    private Row row(int ordinal, Map<String, Cell> place) {
        Cell first = place.values().iterator().next();
        List<Cell> cells = new ArrayList<>();
        cells.add(first.saying(Integer.toString(ordinal)));
        titles.forEach(title -> cells.add(place.getOrDefault(title, first.saying(""))));
        return new Row(first.sheet(), first.line(), cells);
    }
}
