package org.ohmstead.reports.render;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A table with its heading.
 *
 * @param name short, at most 31 characters: also the sheet's name in XLSX
 * @param sentence said above the table; of an empty table all there is
 * @param picture beside the heading on paper; null for none
 * @param opensPage whether it begins a page on paper
 */
public record Section(
        String name,
        String sentence,
        List<Column> columns,
        List<List<Cell>> rows,
        @Nullable Picture picture,
        boolean opensPage) {

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

    public Section(String name, String sentence, List<Column> columns, List<List<Cell>> rows) {
        this(name, sentence, columns, rows, null, false);
    }

    /** The same at the top of a page, with a picture. */
    public Section onItsOwnPage(@Nullable Picture beside) {
        return new Section(name, sentence, columns, rows, beside, true);
    }

    /** Without the columns in which nothing stands, save those to write in. */
    Section withoutEmptyColumns() {
        List<Integer> kept = IntStream.range(0, columns.size())
                .filter(i -> columns.get(i).kind() == Column.Kind.BLANK
                        || rows.stream().anyMatch(row -> !row.get(i).equals(Cell.NONE)))
                .boxed()
                .toList();
        return new Section(
                name,
                sentence,
                kept.stream().map(columns::get).toList(),
                rows.stream().map(row -> kept.stream().map(row::get).toList()).toList(),
                picture,
                opensPage);
    }

    /**
     * @param share of the page's width, in any unit common to the table's columns
     * @param kind how its cells are set
     */
    public record Column(String title, int share, Kind kind) {

        public enum Kind {
            WORDS,
            /** Flush right. */
            NUMBER,
            /** Boxes to write in. */
            BLANK
        }

        public static Column words(String title, int share) {
            return new Column(title, share, Kind.WORDS);
        }

        public static Column number(String title, int share) {
            return new Column(title, share, Kind.NUMBER);
        }

        public static Column blank(String title, int share) {
            return new Column(title, share, Kind.BLANK);
        }

        public boolean numeric() {
            return kind == Kind.NUMBER;
        }
    }
}
