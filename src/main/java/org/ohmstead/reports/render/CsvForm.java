package org.ohmstead.reports.render;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.ohmstead.kernel.FormulaGuard;

/** One table as CSV (RFC 4180, UTF-8): a heading line, then the rows. */
public final class CsvForm {

    private CsvForm() {}

    /** Words that a spreadsheet program would run get an apostrophe in front; numbers and days are left alone. */
    public static void write(Section table, OutputStream out) {
        try {
            CsvWriter csv = CsvWriter.builder()
                    .lineDelimiter(LineDelimiter.CRLF)
                    .build(new OutputStreamWriter(out, StandardCharsets.UTF_8));
            csv.writeRecord(table.columns().stream().map(Section.Column::title).toList());
            table.rows().forEach(row -> csv.writeRecord(texts(row)));
            csv.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> texts(List<Cell> row) {
        return row.stream().map(CsvForm::text).toList();
    }

    private static String text(Cell cell) {
        return cell instanceof Cell.Words words ? FormulaGuard.guarded(words.text()) : cell.shown();
    }
}
