package org.ohmstead.intake.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the row of column titles that begins with "position". */
final class ColumnsReader {

    static final String FIRST_TITLE = "position";
    private static final Pattern TITLE = Pattern.compile("(jar|link)(?: ([1-9]))? (\\S+)");
    private static final String CHOICES =
            "jar mΩ (or jar S for conductance), jar V, jar °C, jar SG, link µΩ, link 2 µΩ and so on";

    private final Findings findings;

    ColumnsReader(Findings findings) {
        this.findings = findings;
    }

    List<Column> read(Row row) {
        List<Column> columns = new ArrayList<>();
        columns.add(new Column(1, row.cell(1).column(), ColumnKind.POSITION, 0, null, null));
        for (int number = 2; number <= row.cells().size(); number++) {
            Cell title = row.cell(number);
            if (!title.isEmpty()) {
                column(number, title).ifPresent(column -> addOnce(columns, column, title));
            }
        }
        return columns;
    }

    private void addOnce(List<Column> columns, Column column, Cell title) {
        if (columns.stream().anyMatch(column::isSameAs)) {
            lost(title, "This column stands twice; the first one is read.", "Leave one out, or number the straps.");
        } else {
            columns.add(column);
        }
    }

    private Optional<Column> column(int number, Cell title) {
        Matcher parts = TITLE.matcher(Spelling.plain(title.text()));
        Optional<Unit> unit = parts.matches() ? Unit.named(parts.group(3)) : Optional.empty();
        Optional<Column> column = unit.flatMap(written -> column(number, title.column(), parts, written));
        if (column.isEmpty()) {
            lost(title, "A survey sheet has no such column.", "Use one of: " + CHOICES + ".");
        }
        return column;
    }

    private static Optional<Column> column(int number, int shown, Matcher parts, Unit written) {
        String strap = parts.group(2);
        if (parts.group(1).equals("link")) {
            return written.quantity() == Quantity.RESISTANCE
                    ? Optional.of(link(number, shown, strap == null ? 1 : Integer.parseInt(strap), written))
                    : Optional.empty();
        }
        return strap == null ? jar(number, shown, written) : Optional.empty();
    }

    private static Column link(int number, int shown, int strap, Unit written) {
        return new Column(number, shown, ColumnKind.LINK, strap, written, Unit.MICROOHM);
    }

    private static Optional<Column> jar(int number, int shown, Unit written) {
        return switch (written.quantity()) {
            case RESISTANCE -> Optional.of(new Column(number, shown, ColumnKind.JAR_OHMIC, 0, written, Unit.MILLIOHM));
            case CONDUCTANCE -> Optional.of(new Column(number, shown, ColumnKind.JAR_OHMIC, 0, written, Unit.SIEMENS));
            case VOLTAGE -> Optional.of(new Column(number, shown, ColumnKind.JAR_VOLTS, 0, written, Unit.VOLT));
            case TEMPERATURE ->
                Optional.of(new Column(number, shown, ColumnKind.JAR_CELSIUS, 0, written, Unit.CELSIUS));
            case GRAVITY -> Optional.of(new Column(number, shown, ColumnKind.JAR_GRAVITY, 0, written, Unit.GRAVITY));
            case CURRENT, FREQUENCY -> Optional.empty();
        };
    }

    private void lost(Cell title, String message, String remedy) {
        findings.add(Finding.lost(title, message, remedy));
    }
}
