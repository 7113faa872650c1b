package org.ohmstead.intake.file;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One line of the file, cut into cells; cells beyond its end are empty. */
record Row(int line, List<Cell> cells) {

    static Row of(int line, List<String> fields) {
        List<Cell> cells = new ArrayList<>(fields.size());
        for (String field : fields) {
            cells.add(new Cell(line, cells.size() + 1, Spelling.trimmed(field)));
        }
        return new Row(line, cells);
    }

    Cell cell(int column) {
        return column <= cells.size() ? cells.get(column - 1) : new Cell(line, column, "");
    }

    boolean isBlank() {
        return cells.stream().allMatch(Cell::isEmpty);
    }

    boolean isComment() {
        return cell(1).text().startsWith("#");
    }

    /** The first cell after the given column that says something; null when there is none. */
    @Nullable
    Cell firstFilledAfter(int column) {
        return cells.stream()
                .filter(cell -> cell.column() > column && !cell.isEmpty())
                .findFirst()
                .orElse(null);
    }
}
