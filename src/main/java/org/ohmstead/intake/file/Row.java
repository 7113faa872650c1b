package org.ohmstead.intake.file;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One line of the file, cut into cells; cells beyond its end are empty.
 *
 * @param sheet name of its worksheet; empty when the file has no worksheets
 */
public record Row(String sheet, int line, List<Cell> cells) {

    public Row {
        cells = List.copyOf(cells);
    }

    public static Row of(int line, List<String> fields) {
        return of("", line, fields);
    }

    public static Row of(String sheet, int line, List<String> fields) {
        List<Cell> cells = new ArrayList<>(fields.size());
        for (String field : fields) {
            cells.add(new Cell(sheet, line, cells.size() + 1, Spelling.trimmed(field)));
        }
        return new Row(sheet, line, cells);
    }

    /** The cell of that number, counted from 1. */
    public Cell cell(int number) {
        return number <= cells.size() ? cells.get(number - 1) : new Cell(sheet, line, number, "");
    }

    public boolean isBlank() {
        for (Cell cell : cells) {
            if (!cell.isEmpty()) {
                return false;
            }
        }
        return true;
    }

    public boolean isComment() {
        return cell(1).text().startsWith("#");
    }

    /** The first cell after the given number that says something; null when there is none. */
    public @Nullable Cell firstFilledAfter(int number) {
        for (int i = number; i < cells.size(); i++) {
            if (!cells.get(i).isEmpty()) {
                return cells.get(i);
            }
        }
        return null;
    }
}
