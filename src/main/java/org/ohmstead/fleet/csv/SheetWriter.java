package org.ohmstead.fleet.csv;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.ohmstead.kernel.FormulaGuard;

/** Writes one register file, RFC 4180 in UTF-8, row by row. */
public final class SheetWriter<E> implements AutoCloseable {

    private final Sheet<E> sheet;
    private final CsvWriter csv;

    /** The stream is flushed at the end but left open. */
    public SheetWriter(Sheet<E> sheet, OutputStream out) {
        this.sheet = sheet;
        this.csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out, StandardCharsets.UTF_8);
        csv.writeRecord(sheet.headers());
    }

    public void write(E entry) {
        csv.writeRecord(
                sheet.columns().stream().map(column -> cell(column, entry)).toList());
    }

    private static <E> String cell(Column<E, ?> column, E entry) {
        String text = column.textOf(entry);
        return column.cell().isText() ? FormulaGuard.guarded(text) : text;
    }

    @Override
    public void close() throws IOException {
        csv.flush();
    }
}
