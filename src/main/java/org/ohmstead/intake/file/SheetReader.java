package org.ohmstead.intake.file;

import java.io.IOException;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Reads survey sheets, one after the other: CSV in bounded memory, workbooks and JSON within limits. Whatever the bytes, the
 * answer is a value: what could not be read is a finding, never an exception. The written interpretation of every doubtful
 * input is {@code docs/survey-files.md}.
 */
public final class SheetReader {

    private final Consumer<SurveySheet> sheets;
    private final Findings findings = new Findings();
    private boolean commaPartsColumns;
    private @Nullable SheetSplitter splitter;

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
        return new SheetReader(sheets).read(source);
    }

    private FileReading read(ByteSource source) throws IOException {
        String encoding =
                FileRows.read(source, this::dialect, null, row -> splitter().accept(row), findings);
        int count = encoding.isEmpty() ? 0 : splitter().finish();
        return new FileReading(encoding, count, findings.all());
    }

    private Dialect dialect(String start) {
        char delimiter = Heading.delimiter(start);
        commaPartsColumns = delimiter == ',';
        return Dialect.delimitedBy(delimiter);
    }

    /** Whether commas part the columns is known only once the text begins. */
    private SheetSplitter splitter() {
        SheetSplitter known = splitter;
        if (known == null) {
            known = new SheetSplitter(commaPartsColumns, sheets, findings);
            splitter = known;
        }
        return known;
    }
}
