package org.ohmstead.replay;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmstead.fleet.csv.Sheet;
import org.ohmstead.fleet.csv.SheetReader;
import org.ohmstead.fleet.csv.TextRow;
import org.ohmstead.fleet.csv.TextTable;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.Partial;

/** All rows of one kind of register file, wherever they stand below the folder. */
final class RegisterFile<E> {
    private final Sheet<E> sheet;
    private final ReplayFolder folder;
    private final Notes notes;
    private final Map<String, Row<E>> rows = new LinkedHashMap<>();

    /** An entry and where it stands. */
    record Row<E>(Path file, int line, E entry) {}

    private RegisterFile(Sheet<E> sheet, ReplayFolder folder, Notes notes) {
        this.sheet = sheet;
        this.folder = folder;
        this.notes = notes;
    }

    /** By key; of two rows with one key the first one counts. */
    static <E> Map<String, Row<E>> read(Sheet<E> sheet, ReplayFolder folder, Notes notes) throws IOException {
        RegisterFile<E> reading = new RegisterFile<>(sheet, folder, notes);
        for (Path file : folder.register(sheet)) {
            reading.take(file);
        }
        return reading.rows;
    }

    private void take(Path file) throws IOException {
        Path shown = folder.shown(file);
        try (InputStream in = Files.newInputStream(file)) {
            TextTable table = SheetReader.table(sheet, in);
            table.flaws().forEach(flaw -> notes.skip(shown, flaw));
            for (TextRow row : table.rows()) {
                read(shown, row).ifPresent(entry -> keep(shown, row.line(), entry));
            }
        }
    }

    /** A row whose only flaws lie in what it need not say is read without that. */
    private Optional<E> read(Path shown, TextRow row) {
        TextRow rest = withAllHeaders(row);
        Partial<E> read = sheet.read(rest);
        List<Flaw> flaws = new ArrayList<>();
        for (int attempt = 0; attempt < 3 && !read.isFlawless(); attempt++) {
            flaws.addAll(read.flaws());
            rest = without(read.flaws(), rest);
            read = sheet.read(rest);
        }
        boolean readable = read.isFlawless();
        flaws.forEach(flaw -> {
            if (readable) {
                notes.lose(shown, flaw);
            } else {
                notes.skip(shown, flaw);
            }
        });
        return read.rows().stream().findFirst();
    }

    /** With empty cells for the columns that the file lacks, after its own. */
    private TextRow withAllHeaders(TextRow row) {
        Map<String, String> cells = new LinkedHashMap<>(row.cells());
        sheet.headers().forEach(header -> cells.putIfAbsent(header, ""));
        return new TextRow(row.line(), cells);
    }

    /** Without the flawed cells and those that belong to them, such as a value's source. */
    private static TextRow without(List<Flaw> flaws, TextRow row) {
        List<String> headers = List.copyOf(row.cells().keySet());
        Set<String> flawed = flaws.stream()
                .filter(flaw -> flaw.column() > 0)
                .map(flaw -> firstWord(headers.get(flaw.column() - 1)))
                .collect(Collectors.toSet());
        Map<String, String> kept = new LinkedHashMap<>(row.cells());
        kept.replaceAll((header, cell) -> flawed.contains(firstWord(header)) ? "" : cell);
        return new TextRow(row.line(), kept);
    }

    private static String firstWord(String header) {
        return header.split("_", 2)[0];
    }

    private void keep(Path shown, int line, E entry) {
        Row<E> first = rows.putIfAbsent(sheet.keyOf(entry), new Row<>(shown, line, entry));
        if (first != null) {
            notes.skip(shown, twice(line, entry, first));
        }
    }

    private Flaw twice(int line, E entry, Row<E> first) {
        return Flaw.ofLine(
                line,
                "The " + sheet.one() + " " + sheet.keyOf(entry) + " stands already in " + first.file() + ", line "
                        + first.line() + ".",
                "Keep one of the two.");
    }
}
