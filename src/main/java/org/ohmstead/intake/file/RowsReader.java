package org.ohmstead.intake.file;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.kernel.Flaw;

/** Reads the rows of readings under their column titles. */
final class RowsReader {

    static final int MOST_ROWS = 2_000;
    private static final int LONGEST_POSITION = 4;
    private static final int KINDS = ColumnKind.values().length;

    private final List<Column> columns;
    private final NumberText numbers;
    private final Findings findings;
    private final int strapColumns;
    private final BitSet titled = new BitSet();
    private boolean tooMany;
    private final List<ReadingRow> rows = new ArrayList<>();

    RowsReader(List<Column> columns, NumberText numbers, Findings findings) {
        this.columns = columns;
        this.numbers = numbers;
        this.findings = findings;
        this.strapColumns = columns.stream().mapToInt(Column::strap).max().orElse(0);
        columns.forEach(column -> titled.set(column.number()));
    }

    void accept(Row row) {
        if (tooMany) {
            return;
        }
        if (rows.size() == MOST_ROWS) {
            tooMany(row);
            return;
        }
        untitled(row);
        Cell position = row.cell(1);
        if (isPosition(position.text())) {
            rows.add(reading(row, Integer.parseInt(position.text())));
        } else {
            noPosition(position);
        }
    }

    List<ReadingRow> rows() {
        return rows;
    }

    int strapColumns() {
        return strapColumns;
    }

    /** The first column of each kind. */
    Map<ColumnKind, Integer> columnNumbers() {
        Map<ColumnKind, Integer> numbered = new EnumMap<>(ColumnKind.class);
        columns.forEach(column -> numbered.putIfAbsent(column.kind(), column.shown()));
        return numbered;
    }

    private ReadingRow reading(Row row, int position) {
        double[] jar = new double[KINDS];
        double[] links = new double[strapColumns];
        Arrays.fill(jar, Double.NaN);
        Arrays.fill(links, Double.NaN);
        for (Column column : columns) {
            double value = value(row, column);
            if (column.kind() == ColumnKind.LINK) {
                links[column.strap() - 1] = value;
            } else {
                jar[column.kind().ordinal()] = value;
            }
        }
        return new ReadingRow(
                row.line(),
                position,
                jar[ColumnKind.JAR_OHMIC.ordinal()],
                jar[ColumnKind.JAR_VOLTS.ordinal()],
                jar[ColumnKind.JAR_CELSIUS.ordinal()],
                jar[ColumnKind.JAR_GRAVITY.ordinal()],
                links);
    }

    private static boolean isPosition(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return !text.isEmpty() && text.length() <= LONGEST_POSITION;
    }

    private double value(Row row, Column column) {
        Unit written = column.written();
        Unit kept = column.kept();
        return written == null || kept == null ? Double.NaN : numbers.read(row.cell(column.number()), written, kept);
    }

    private void untitled(Row row) {
        for (int number = 1; number <= row.cells().size(); number++) {
            Cell cell = row.cell(number);
            if (!cell.isEmpty() && !titled.get(number)) {
                findings.add(Finding.lost(
                        cell,
                        "This value stands under no column that is read.",
                        "Give the column a title, or empty it; a decimal comma needs columns parted by semicolons."));
            }
        }
    }

    private void noPosition(Cell position) {
        findings.add(Finding.lost(
                position,
                "A row of readings begins with its position, a whole number from 0.",
                "Number the row: 0 for the positive terminal link, 1 for the jar at the positive end."));
    }

    private void tooMany(Row row) {
        tooMany = true;
        findings.add(Finding.unreadable(Flaw.ofLine(
                row.line(),
                "The sheet has more than " + MOST_ROWS + " rows of readings.",
                "Begin each survey with its own heading line.")));
    }
}
