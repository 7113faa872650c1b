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
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Flaw;

/**
 * Reads survey sheets, one after the other, in bounded memory. Whatever the bytes, the answer is a value: what could not be
 * read is a finding, never an exception. The written interpretation of every doubtful input is {@code docs/survey-files.md}.
 */
public final class SheetReader {

    private static final int PEEKED = 1024;
    private static final int MOST_FIELDS = 200;
    private static final int LONGEST_FIELD = 4_000;
    private static final int LONGEST_RECORD = 40_000;

    private final Consumer<SurveySheet> sheets;
    private final Findings findings = new Findings();
    private @Nullable SheetParser sheet;
    private int sheetCount;
    private int lastLine;
    private boolean givenUp;
    private char delimiter = ',';

    private SheetReader(Consumer<SurveySheet> sheets) {
        this.sheets = sheets;
    }

    /**
     * Reads a file.
     *
     * @param sheets given each sheet as soon as it is complete, in the order of the file
     * @throws IOException when the source itself fails
     */
    public static FileReading read(ByteSource source, Consumer<SurveySheet> sheets) throws IOException {
        TextForm form = TextProbe.probe(source);
        SheetReader reader = new SheetReader(sheets);
        Optional.ofNullable(form.finding()).ifPresent(reader.findings::add);
        Charset charset = form.charset();
        if (charset != null) {
            reader.readText(source, form.markBytes(), charset);
        }
        return new FileReading(charset == null ? "" : charset.name(), reader.sheetCount, reader.findings.all());
    }

    private void readText(ByteSource source, int markBytes, Charset charset) throws IOException {
        try (InputStream bytes = source.open()) {
            bytes.skipNBytes(markBytes);
            readRows(new BufferedReader(new InputStreamReader(bytes, charset.newDecoder()), PEEKED * 8));
        } catch (CsvParseException broken) {
            brokenRows();
        } catch (UncheckedIOException | CharacterCodingException failed) {
            undecodable(failed, charset);
        }
        finishSheet();
        if (sheetCount == 0 && !givenUp) {
            giveUp(Flaw.ofFile("The file holds no survey sheet.", beginWith()));
        }
    }

    private void readRows(BufferedReader text) throws IOException {
        delimiter = Heading.delimiter(peek(text));
        CsvRecordHandler handler = CsvRecordHandler.of(limits ->
                limits.maxFields(MOST_FIELDS).maxFieldSize(LONGEST_FIELD).maxRecordSize(LONGEST_RECORD));
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .fieldSeparator(delimiter)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .allowUnclosedQuote(false)
                .build(handler, text)) {
            records.stream().takeWhile(kept -> !givenUp).forEach(this::accept);
        }
    }

    private static String peek(BufferedReader text) throws IOException {
        char[] start = new char[PEEKED];
        text.mark(PEEKED);
        int length = Math.max(0, text.read(start, 0, PEEKED));
        text.reset();
        return new String(start, 0, length);
    }

    private void accept(CsvRecord fields) {
        Row row = Row.of((int) Math.min(Integer.MAX_VALUE, fields.getStartingLineNumber()), fields.getFields());
        lastLine = row.line();
        if (row.isBlank() || row.isComment()) {
            return;
        }
        if (Heading.isHeading(row)) {
            finishSheet();
            begin(row);
            return;
        }
        SheetParser current = sheet;
        if (current != null) {
            current.accept(row);
        } else {
            giveUp(row.cell(1).flaw("The file does not begin with a survey sheet's heading.", beginWith()));
        }
    }

    private void begin(Row heading) {
        if (Heading.isKnownVersion(heading)) {
            sheet = new SheetParser(heading.line(), delimiter == ',');
        } else {
            giveUp(heading.cell(2)
                    .flaw(
                            "This version of the survey sheet is not known here.",
                            "Known is version 1: " + Heading.EXAMPLE));
        }
    }

    private void finishSheet() {
        SheetParser complete = sheet;
        if (complete != null) {
            sheetCount++;
            sheets.accept(complete.finish());
            sheet = null;
        }
    }

    private void giveUp(Flaw flaw) {
        givenUp = true;
        findings.add(Finding.unreadable(flaw));
    }

    private static String beginWith() {
        return "Begin each sheet with the line: " + Heading.EXAMPLE;
    }

    private void brokenRows() {
        giveUp(Flaw.ofLine(
                lastLine + 1,
                "From here on the file does not fall into rows and columns: a quote is not closed, or a row has more than "
                        + MOST_FIELDS + " cells or a cell more than " + LONGEST_FIELD + " characters.",
                "Close or remove the quote, or save the sheet as CSV again."));
    }

    private void undecodable(Exception failed, Charset charset) throws IOException {
        Throwable cause = failed instanceof UncheckedIOException wrapped ? wrapped.getCause() : failed;
        if (!(cause instanceof CharacterCodingException)) {
            throw (IOException) cause;
        }
        giveUp(Flaw.ofLine(
                lastLine + 1,
                "From here on the file's bytes are not " + charset.name() + ", which its first bytes promise.",
                "Save the survey sheet as CSV (UTF-8) and hand in that file."));
    }
}
