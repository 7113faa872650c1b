package org.ohmstead.reports.render;

import java.util.List;

/**
 * A table with its heading.
 *
 * @param name short, at most 31 characters: also the sheet's name in XLSX
 * @param sentence said above the table; of an empty table all there is
 */
public record Section(String name, String sentence, List<Column> columns, List<List<Cell>> rows) {

    public Section {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (List<Cell> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "A row of \"" + name + "\" has " + row.size() + " cells, not " + columns.size());
            }
        }
    }

    /**
     * @param share of the page's width, in any unit common to the table's columns
     * @param numeric set flush right
     */
    public record Column(String title, int share, boolean numeric) {

        public static Column words(String title, int share) {
            return new Column(title, share, false);
        }

        public static Column number(String title, int share) {
            return new Column(title, share, true);
        }
    }
}
