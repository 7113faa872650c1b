package org.ohmstead.intake.file;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.util.function.Function;
import org.ohmstead.kernel.Flaw;

/** Cuts text into rows and cells, in bounded memory. */
final class DelimitedRows {

    private static final int PEEKED = 4096;
    private static final int MOST_FIELDS = 200;
    private static final int LONGEST_FIELD = 4_000;
    private static final int LONGEST_RECORD = 40_000;

    private final Charset charset;
    private final RowSink sink;
    private final Findings findings;
    private int lastLine;

    DelimitedRows(Charset charset, RowSink sink, Findings findings) {
        this.charset = charset;
        this.sink = sink;
        this.findings = findings;
    }

    /**
     * Reads on until the end or until the sink has enough.
     *
     * @param dialect chosen from the first characters
     */
    void read(ByteSource source, int markBytes, Function<String, Dialect> dialect) throws IOException {
        try (InputStream bytes = source.open()) {
            bytes.skipNBytes(markBytes);
            BufferedReader text = new BufferedReader(new InputStreamReader(bytes, charset.newDecoder()), PEEKED * 2);
            read(text, dialect.apply(peek(text)));
        } catch (CsvParseException broken) {
            brokenRows();
        } catch (UncheckedIOException | CharacterCodingException failed) {
            undecodable(failed);
        }
    }

    private void read(BufferedReader text, Dialect dialect) throws IOException {
        CsvRecordHandler handler = CsvRecordHandler.of(limits ->
                limits.maxFields(MOST_FIELDS).maxFieldSize(LONGEST_FIELD).maxRecordSize(LONGEST_RECORD));
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .fieldSeparator(dialect.delimiter())
                .quoteCharacter(dialect.quote())
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .build(handler, text)) {
            records.stream().takeWhile(this::isWanted).forEach(taken -> {});
        }
    }

    private boolean isWanted(CsvRecord fields) {
        Row row = Row.of((int) Math.min(Integer.MAX_VALUE, fields.getStartingLineNumber()), fields.getFields());
        lastLine = row.line();
        return sink.accept(row);
    }

    private static String peek(BufferedReader text) throws IOException {
        char[] start = new char[PEEKED];
        text.mark(PEEKED);
        int length = Math.max(0, text.read(start, 0, PEEKED));
        text.reset();
        return new String(start, 0, length);
    }

    private void brokenRows() {
        giveUp(
                "From here on the file does not fall into rows and columns: a quote is not closed, or a row has more than "
                        + MOST_FIELDS + " cells or a cell more than " + LONGEST_FIELD + " characters.",
                "Close or remove the quote, or save the sheet as CSV again.");
    }

    private void undecodable(Exception failed) throws IOException {
        Throwable cause = failed instanceof UncheckedIOException wrapped ? wrapped.getCause() : failed;
        if (!(cause instanceof CharacterCodingException)) {
            throw (IOException) cause;
        }
        giveUp(
                "From here on the file's bytes are not " + charset.name() + ", which its first bytes promise.",
                "Save the survey sheet as CSV (UTF-8) and hand in that file.");
    }

    private void giveUp(String message, String remedy) {
        findings.add(Finding.unreadable(Flaw.ofLine(lastLine + 1, message, remedy)));
    }
}
