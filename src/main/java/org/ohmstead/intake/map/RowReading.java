package org.ohmstead.intake.map;

import java.util.Map;
import java.util.Optional;
import org.ohmstead.intake.file.Cell;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.Findings;
import org.ohmstead.intake.file.Quantity;
import org.ohmstead.intake.file.Row;
import org.ohmstead.intake.file.Unit;

/** Reads one row of a table: a jar with its readings, a link of its own, or a single reading that names its quantity. */
final class RowReading {

    private final ColumnMap map;
    private final MapNumbers numbers;
    private final Findings findings;

    RowReading(ColumnMap map, MapNumbers numbers, Findings findings) {
        this.map = map;
        this.numbers = numbers;
        this.findings = findings;
    }

    private static Cell cell(Row row, Map<Integer, ColumnRule> columns, String holds) {
        return columns.entrySet().stream()
                .filter(entry -> entry.getValue().holds().equals(holds))
                .map(entry -> row.cell(entry.getKey()))
                .findFirst()
                .orElseGet(() -> new Cell(row.sheet(), row.line(), 0, ""));
    }

    boolean isReading(Row row, Map<Integer, ColumnRule> columns) {
        return PlaceText.read(cell(row, columns, Holds.POSITION).text()).isPresent();
    }

    void read(Row row, Map<Integer, ColumnRule> columns, Gathered survey) {
        Cell position = cell(row, columns, Holds.POSITION);
        Optional<PlaceText> place = PlaceText.read(position.text());
        if (place.isEmpty()) {
            noPlace(position.isEmpty() ? row.cell(1) : position);
            return;
        }
        columns.forEach((number, rule) -> {
            Cell cell = row.cell(number);
            if (rule.holds().equals(Holds.VALUE)) {
                single(cell, row, columns, place.get(), survey);
            } else if (Holds.isReading(rule.holds()) && !cell.isEmpty()) {
                reading(place.get(), rule, cell, survey);
            }
        });
    }

    private void reading(PlaceText place, ColumnRule rule, Cell cell, Gathered survey) {
        if (place.link() && !Holds.isLink(rule.holds())) {
            String unit = rule.linkUnit().isEmpty() ? rule.unit() : rule.linkUnit();
            reading(place.ordinal(), new ColumnRule(rule.title(), Holds.LINK, unit, ""), cell, "", survey);
            return;
        }
        boolean before = map.linkBefore() && Holds.isLink(rule.holds()) && !place.link() && place.ordinal() > 0;
        reading(before ? place.ordinal() - 1 : place.ordinal(), rule, cell, "", survey);
    }

    private void single(Cell value, Row row, Map<Integer, ColumnRule> columns, PlaceText place, Gathered survey) {
        Cell word = cell(row, columns, Holds.QUANTITY);
        Optional<ColumnRule> named = map.quantities().stream()
                .filter(rule -> FactsFound.bare(rule.title()).equals(FactsFound.bare(word.text())))
                .findFirst();
        if (named.isEmpty()) {
            findings.add(Finding.lost(
                    word, "The column map has no such quantity.", "Name it among the quantities of the map."));
            return;
        }
        String strap = cell(row, columns, Holds.STRAP).text();
        ColumnRule rule = named.get();
        if (rule.holds().equals(Holds.LINK) && strap.matches("[2-8]")) {
            rule = new ColumnRule(rule.title(), Holds.LINK + " " + strap, rule.unit(), rule.linkUnit());
        }
        String unit = cell(row, columns, Holds.UNIT).text();
        boolean before = map.linkBefore() && Holds.isLink(rule.holds()) && !place.link() && place.ordinal() > 0;
        reading(before ? place.ordinal() - 1 : place.ordinal(), rule, value, unit, survey);
    }

    /** @param rowUnit as the row itself says it; empty where it says none */
    void reading(int ordinal, ColumnRule rule, Cell cell, String rowUnit, Gathered survey) {
        Optional<Unit> written =
                Unit.named(rowUnit).or(() -> Unit.named(rule.unit())).or(() -> Holds.implied(rule.holds()));
        numbers.read(cell, written, unit -> kept(rule.holds(), unit))
                .ifPresent(kept -> survey.reading(ordinal, Holds.title(rule.holds(), kept.unit()), kept.cell()));
    }

    private static Unit kept(String holds, Unit written) {
        boolean ohmic = written.quantity() == Quantity.RESISTANCE || written.quantity() == Quantity.CONDUCTANCE;
        return holds.equals(Holds.JAR_OHMIC) && !ohmic ? Unit.MILLIOHM : Holds.kept(holds, written);
    }

    void noPlace(Cell cell) {
        findings.add(
                Finding.lost(
                        cell,
                        "This row does not say which jar or link it is about.",
                        "Write 7 for a jar, 7-8 for a link, + or - for a terminal; or name the word among those to pass over."));
    }
}
