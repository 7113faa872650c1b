package org.ohmstead.intake.file;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.ohmstead.kernel.Flaw;

/**
 * Reads the worksheets of a workbook (ECMA-376), one row after the other. Typed cells become the text that a survey sheet
 * would hold: numbers with fifteen digits, dates year first, yes and no.
 */
final class WorkbookRows {

    private static final String WORKBOOK = "xl/workbook.xml";
    private static final int MOST_SHEETS = 200;
    private static final int LONGEST_NAME = 80;

    private final Archive archive;
    private final RowSink sink;
    private final Findings findings;

    WorkbookRows(Archive archive, RowSink sink, Findings findings) {
        this.archive = archive;
        this.sink = sink;
        this.findings = findings;
    }

    private record Sheet(String name, String relation) {}

    void read() throws IOException {
        Optional<ArchiveEntry> book = archive.entry(WORKBOOK);
        if (book.isEmpty()) {
            unreadable("This is an archive, but no workbook.");
            return;
        }
        try {
            read(book.get());
        } catch (XMLStreamException broken) {
            if (broken.getNestedException() instanceof BadArchive untrue) {
                throw untrue;
            }
            unreadable("The workbook holds text that is not well-formed, or that points outside of it.");
        }
    }

    private void read(ArchiveEntry book) throws IOException, XMLStreamException {
        List<Sheet> sheets = new ArrayList<>();
        boolean[] from1904 = new boolean[1];
        SafeXml.elements(archive.open(book), element -> {
            if (element.getLocalName().equals("sheet") && sheets.size() < MOST_SHEETS) {
                sheets.add(new Sheet(shown(SafeXml.attribute(element, "name")), SafeXml.attribute(element, "id")));
            } else if (element.getLocalName().equals("workbookPr")) {
                from1904[0] = WorkbookValues.isTrue(SafeXml.attribute(element, "date1904"));
            }
        });
        Map<String, String> parts = WorkbookParts.relations(archive);
        WorkbookValues values = WorkbookValues.of(archive, from1904[0]);
        Set<String> read = new HashSet<>();
        for (Sheet sheet : sheets) {
            Optional<ArchiveEntry> part = archive.entry(parts.getOrDefault(sheet.relation(), ""));
            // a part named again and again is read once
            if (part.isPresent() && read.add(part.get().name()) && !worksheet(sheet.name(), part.get(), values)) {
                return;
            }
        }
    }

    private boolean worksheet(String name, ArchiveEntry part, WorkbookValues values)
            throws IOException, XMLStreamException {
        try (InputStream bytes = archive.open(part)) {
            XMLStreamReader xml = SafeXml.reader(bytes);
            WorksheetRows rows = new WorksheetRows(name, xml, values, sink);
            boolean more = rows.read();
            if (rows.isTooWide()) {
                findings.add(Finding.unreadable(Flaw.ofLine(
                        rows.line(),
                        "Worksheet \"" + name + "\" has more than " + WorksheetRows.MOST_CELLS + " columns.",
                        "Keep only the columns of the survey.")));
            }
            return more;
        }
    }

    private static String shown(String name) {
        String trimmed = Spelling.trimmed(name);
        return trimmed.length() <= LONGEST_NAME ? trimmed : trimmed.substring(0, LONGEST_NAME) + "…";
    }

    private void unreadable(String message) {
        findings.add(Finding.unreadable(
                Flaw.ofFile(message, "Save the survey sheet as a workbook (XLSX) or CSV and hand in that file.")));
    }
}
