package org.ohmstead.intake.map;

import java.util.List;
import java.util.Optional;
import org.ohmstead.intake.file.Cell;
import org.ohmstead.intake.file.Row;

/** Reads the rows below the name of a quantity. */
final class BlockReading {

    private final ColumnRule rule;
    private final boolean inOrder;
    private final RowReading readings;
    private int next;

    BlockReading(ColumnRule rule, boolean inOrder, RowReading readings) {
        this.rule = rule;
        this.inOrder = inOrder;
        this.readings = readings;
        this.next = Holds.isLink(rule.holds()) ? 0 : 1;
    }

    /** @param after number of the cell that named the block in this row; 0 in the rows below */
    void read(Row row, int after, Gathered survey) {
        List<Cell> filled =
                row.cells().stream().skip(after).filter(cell -> !cell.isEmpty()).toList();
        if (inOrder) {
            for (Cell cell : filled) {
                readings.reading(next++, rule, cell, "", survey);
            }
            return;
        }
        for (int i = 0; i + 1 < filled.size(); i += 2) {
            Optional<PlaceText> place = PlaceText.read(filled.get(i).text());
            if (place.isPresent()) {
                readings.reading(place.get().ordinal(), rule, filled.get(i + 1), "", survey);
            } else {
                readings.noPlace(filled.get(i));
            }
        }
    }
}
