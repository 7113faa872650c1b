package org.ohmstead.fleet;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.ImportReport.Kind;
import org.ohmstead.fleet.ImportReport.RowChange;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.fleet.csv.SheetReader;
import org.ohmstead.fleet.csv.TextRow;
import org.ohmstead.fleet.csv.TextTable;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.Partial;

/**
 * One file on its way into the register: read as text, completed from the register where a column is left out, checked
 * row by row, compared with the register, fulfilled.
 */
final class FileImport<E> {

    private static final String RETIRED_ON = "retired_on";

    private final Shelf<E> shelf;
    private final Sheet<E> sheet;
    private final TextTable table;
    private final List<Flaw> flaws;
    private final List<Wish<E>> wishes = new ArrayList<>();
    private final Map<String, Integer> lines = new HashMap<>();
    private int unchanged;

    private FileImport(Shelf<E> shelf, TextTable table) {
        this.shelf = shelf;
        this.sheet = shelf.sheet();
        this.table = table;
        this.flaws = new ArrayList<>(table.flaws());
    }

    static <E> FileImport<E> of(Shelf<E> shelf, InputStream in) throws IOException {
        return new FileImport<>(shelf, SheetReader.table(shelf.sheet(), in));
    }

    /** @param write whether to keep what was done; the caller undoes it when the report says not written */
    ImportReport run(boolean write) {
        Map<String, E> known = new HashMap<>();
        shelf.entries().forEach(entry -> known.put(sheet.keyOf(entry), entry));
        table.rows().forEach(row -> take(row, known));
        fulfil();
        List<RowChange> changes = wishes.stream().map(this::change).toList();
        return new ImportReport(sheet.name(), unchanged, changes, List.copyOf(flaws), write && flaws.isEmpty());
    }

    private void take(TextRow row, Map<String, E> known) {
        Partial<E> read = sheet.read(completed(row, known.get(sheet.keyOf(row))));
        flaws.addAll(read.flaws());
        for (E entry : read.rows()) {
            String key = sheet.keyOf(entry);
            Integer first = lines.putIfAbsent(key, row.line());
            if (first != null) {
                flaws.add(Flaw.ofLine(
                        row.line(), key + " stands on line " + first + " already.", "Keep one of the two lines."));
            } else {
                compare(row.line(), known.get(key), entry);
            }
        }
    }

    /** A column that the file does not have keeps what the register says. */
    private TextRow completed(TextRow row, @Nullable E known) {
        if (known == null) {
            return row;
        }
        Map<String, String> cells = new LinkedHashMap<>(row.cells());
        sheet.cells(known).forEach(cells::putIfAbsent);
        return new TextRow(row.line(), cells);
    }

    private void compare(int line, @Nullable E before, E after) {
        if (before != null && sheet.cells(before).equals(sheet.cells(after))) {
            unchanged++;
        } else {
            wishes.add(new Wish<>(line, before, after));
        }
    }

    private void fulfil() {
        try {
            shelf.fulfil(wishes).forEach(flaw -> flaws.add(atFileColumn(flaw)));
        } catch (Conflict e) {
            flaws.add(Flaw.ofFile(String.valueOf(e.getMessage()), "Have it previewed again, mend it and try again."));
        }
    }

    /** The shelves know the sheet's columns; the person knows the file's. */
    private Flaw atFileColumn(Flaw flaw) {
        if (flaw.column() == 0) {
            return flaw;
        }
        String header = sheet.headers().get(flaw.column() - 1);
        int column = table.headers().indexOf(header) + 1;
        return new Flaw(flaw.line(), column, flaw.value(), flaw.message(), flaw.remedy());
    }

    private RowChange change(Wish<E> wish) {
        E before = wish.before();
        if (before == null) {
            Map<String, List<String>> cells = new LinkedHashMap<>();
            sheet.cells(wish.after()).forEach((header, text) -> {
                if (!text.isEmpty()) {
                    cells.put(header, List.of("", text));
                }
            });
            return new RowChange(wish.line(), Kind.CREATED, sheet.keyOf(wish.after()), cells);
        }
        Map<String, List<String>> cells = Sound.changes(sheet, before, wish.after());
        List<String> retired = cells.getOrDefault(RETIRED_ON, List.of("", ""));
        Kind kind = retired.get(0).isEmpty() && !retired.get(1).isEmpty() ? Kind.RETIRED : Kind.CHANGED;
        return new RowChange(wish.line(), kind, sheet.keyOf(before), cells);
    }
}
