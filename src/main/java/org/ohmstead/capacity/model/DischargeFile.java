package org.ohmstead.capacity.model;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.Partial;

/**
 * The CSV form of a discharge record: a line of headers {@code minutes}, {@code amps}, {@code string_volts} and, where jars
 * were recorded, {@code jar_1}, {@code jar_2} and so on, then a row per instant. Between columns stands a comma, a semicolon
 * or a tabulator; with the latter two a decimal comma is read as well. An empty cell was not read.
 */
public final class DischargeFile {

    public static final int MOST_BYTES = 8 * 1024 * 1024;

    private DischargeFile() {}

    /** The record, alone in the rows; or what is wrong with the file, each with its place. */
    public static Partial<DischargeRecord> read(byte[] bytes, int positions) {
        if (bytes.length > MOST_BYTES) {
            return wrong(
                    "The file is larger than 8 MB.", "Record less often, a row a minute will do, and hand that in.");
        }
        String text;
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            return wrong("The file is not UTF-8 text.", "Save it as CSV (UTF-8) and hand it in again.");
        }
        return read(text.startsWith("\uFEFF") ? text.substring(1) : text, positions);
    }

    private static Partial<DischargeRecord> read(String text, int positions) {
        char separator = separator(text);
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .fieldSeparator(separator)
                .allowUnclosedQuote(false)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(new StringReader(text))) {
            return new DischargeRows(positions, separator != ',').read(records.iterator());
        } catch (CsvParseException e) {
            return wrong(
                    "The file does not fall into rows and cells.", "Close every quotation mark that opens a cell.");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Partial<DischargeRecord> wrong(String message, String remedy) {
        return new Partial<>(List.of(), List.of(Flaw.ofFile(message, remedy)));
    }

    private static char separator(String text) {
        String first = text.lines().findFirst().orElse("");
        return first.indexOf(';') >= 0 ? ';' : first.indexOf('\t') >= 0 ? '\t' : ',';
    }
}
