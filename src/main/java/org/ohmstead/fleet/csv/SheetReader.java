package org.ohmstead.fleet.csv;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ohmstead.kernel.Flaw;
import org.ohmstead.kernel.FormulaGuard;
import org.ohmstead.kernel.Partial;

/**
 * Reads one register file. Strict in what it takes for a value, lenient in form: a byte order mark, semicolons or tabs
 * between the cells, any line end and any order of the columns will do.
 */
public final class SheetReader {

    /** A larger file is refused as a whole. */
    public static final int MOST_ROWS = 200_000;

    private static final int MOST_BYTES = 32 * 1024 * 1024;

    private SheetReader() {}

    /** Every row that could be read, and what was wrong with the others. */
    public static <E> Partial<Line<E>> read(Sheet<E> sheet, InputStream in) throws IOException {
        TextTable table = table(sheet, in);
        List<Flaw> flaws = new ArrayList<>(table.flaws());
        List<Line<E>> lines = new ArrayList<>();
        for (TextRow row : table.rows()) {
            Partial<E> read = sheet.read(row);
            read.rows().forEach(entry -> lines.add(new Line<>(row.line(), entry)));
            flaws.addAll(read.flaws());
        }
        return new Partial<>(lines, flaws);
    }

    /** The file as text under the sheet's headers; a file that cannot be read at all has flaws and no rows. */
    public static TextTable table(Sheet<?> sheet, InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            return refused(Flaw.ofFile("The file is larger than 32 MB.", "Split it and send the parts in turn."));
        }
        String text;
        try {
            text = decoded(bytes);
        } catch (CharacterCodingException e) {
            return refused(Flaw.ofFile("The file is not UTF-8 text.", "Save it as CSV UTF-8 and send it again."));
        }
        char separator = separatorOf(text);
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .fieldSeparator(separator)
                .allowUnclosedQuote(false)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .ofCsvRecord(new StringReader(text))) {
            return new SheetReading(sheet, separator == ';').read(records.iterator());
        } catch (CsvParseException e) {
            return refused(Flaw.ofFile(
                    "The file breaks off inside a quoted cell or a cell is too long: " + e.getMessage(),
                    "Close every quotation mark that opens a cell."));
        }
    }

    static TextTable refused(Flaw flaw) {
        return new TextTable(List.of(), List.of(), List.of(flaw));
    }

    private static String decoded(byte[] bytes) throws CharacterCodingException {
        String text = StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** The one that stands most often in the first line. */
    private static char separatorOf(String text) {
        String first = text.lines().findFirst().orElse("");
        char best = ',';
        for (char candidate : new char[] {';', '\t'}) {
            best = count(first, candidate) > count(first, best) ? candidate : best;
        }
        return best;
    }

    private static long count(String line, char wanted) {
        return line.chars().filter(c -> c == wanted).count();
    }

    /** One file under reading. */
    private record SheetReading(Sheet<?> sheet, boolean decimalCommas) {

        TextTable read(Iterator<CsvRecord> records) {
            if (!records.hasNext()) {
                return refused(Flaw.ofFile("The file is empty.", "Start it with a line of headers."));
            }
            CsvRecord first = records.next();
            List<String> headers = first.getFields().stream().map(String::strip).toList();
            List<Flaw> flaws = headerFlaws((int) first.getStartingLineNumber(), headers);
            return flaws.isEmpty() ? rows(headers, records) : new TextTable(headers, List.of(), flaws);
        }

        private List<Flaw> headerFlaws(int line, List<String> headers) {
            List<Flaw> flaws = new ArrayList<>();
            Set<String> seen = new HashSet<>();
            String choices = String.join(", ", sheet.headers());
            for (int i = 0; i < headers.size(); i++) {
                String header = headers.get(i);
                if (!sheet.headers().contains(header)) {
                    flaws.add(
                            new Flaw(line, i + 1, header, "There is no such column.", "Columns are: " + choices + "."));
                } else if (!seen.add(header)) {
                    flaws.add(new Flaw(line, i + 1, header, "The column stands there twice.", "Remove one of them."));
                }
            }
            sheet.key().stream()
                    .map(Column::header)
                    .filter(header -> !headers.contains(header))
                    .map(header -> Flaw.ofLine(line, "The column " + header + " is missing.", "Add it."))
                    .forEach(flaws::add);
            return flaws;
        }

        private TextTable rows(List<String> headers, Iterator<CsvRecord> records) {
            List<TextRow> rows = new ArrayList<>();
            List<Flaw> flaws = new ArrayList<>();
            while (records.hasNext()) {
                CsvRecord csv = records.next();
                if (rows.size() == MOST_ROWS) {
                    return refused(Flaw.ofFile(
                            "The file has more than " + MOST_ROWS + " rows.", "Split it and send the parts in turn."));
                }
                if (csv.getFields().stream().allMatch(String::isBlank)) {
                    continue;
                }
                if (csv.getFieldCount() == headers.size()) {
                    rows.add(row(headers, csv));
                } else {
                    flaws.add(miscounted(headers, csv));
                }
            }
            return new TextTable(headers, rows, flaws);
        }

        private Flaw miscounted(List<String> headers, CsvRecord csv) {
            return Flaw.ofLine(
                    (int) csv.getStartingLineNumber(),
                    "The line has " + csv.getFieldCount() + " cells under " + headers.size() + " headers.",
                    "Give every column its cell, and quote a cell that holds a separator.");
        }

        private TextRow row(List<String> headers, CsvRecord csv) {
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < headers.size(); i++) {
                cells.put(headers.get(i), cell(headers.get(i), csv.getField(i)));
            }
            return new TextRow((int) csv.getStartingLineNumber(), cells);
        }

        private String cell(String header, String text) {
            Cell<?> cell = sheet.columns().get(sheet.columnNumber(header) - 1).cell();
            if (cell.isText()) {
                return FormulaGuard.bared(text).replace("\r\n", "\n").replace('\r', '\n');
            }
            return decimalCommas && cell.sort() == Cell.Sort.NUMBER ? text.replace(',', '.') : text;
        }
    }
}
