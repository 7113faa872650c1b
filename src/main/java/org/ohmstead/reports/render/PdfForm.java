package org.ohmstead.reports.render;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitWidthDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;

/** A report as tagged PDF on A4 across, readable in black and white; the same contents give the same bytes. */
public final class PdfForm {

    private static final float TITLE_SIZE = 19;
    private static final float HEADING_SIZE = 13;
    private static final float FACT_NAMES = 0.17f * PdfSheet.WIDTH;
    private static final float FACT_WIDTH = 0.8f * PdfSheet.WIDTH;
    private static final float PICTURE_SIDE = 28 * PdfSheet.MM;

    private final PDDocument document;
    private final PdfTags tags;
    private final Typeface plain;
    private final Typeface bold;
    private final Typeface serif;
    private final PdfSheet sheet;
    private final PDDocumentOutline outline = new PDDocumentOutline();

    private PdfForm(PDDocument document) throws IOException {
        this.document = document;
        this.tags = new PdfTags(document);
        this.plain = Typeface.of(document, "SourceSans3-Regular.ttf");
        this.bold = Typeface.of(document, "SourceSans3-Semibold.ttf");
        this.serif = Typeface.of(document, "SourceSerif4-Semibold.ttf");
        this.sheet = new PdfSheet(document, tags, plain);
    }

    public static void write(Report report, OutputStream out) {
        try (PDDocument document = new PDDocument()) {
            new PdfForm(document).write(report);
            Calendar day = GregorianCalendar.from(report.asOf().atStartOfDay(ZoneOffset.UTC));
            PdfHead.write(document, report.title(), day);
            document.setDocumentId((long) report.hashCode());
            document.save(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(Report report) throws IOException {
        document.getDocumentCatalog().setDocumentOutline(outline);
        text(StandardStructureTypes.H1, serif, TITLE_SIZE, report.title());
        sheet.down(3 * PdfSheet.MM);
        facts(report);
        for (Section section : report.sections()) {
            section(section);
        }
        sheet.down(5 * PdfSheet.MM);
        text(StandardStructureTypes.P, plain, PdfTable.SIZE, report.note());
        tags.finish();
        sheet.finish("Ohmstead · " + report.title());
    }

    /** A piece of text over the whole width. */
    private void text(String type, Typeface face, float size, String words) throws IOException {
        text(type, face, size, words, PdfSheet.WIDTH);
    }

    private void text(String type, Typeface face, float size, String words, float width) throws IOException {
        List<String> lines = face.wrapped(words, width, size);
        float height = lines.size() * size * PdfSheet.LEADING;
        if (height > sheet.left()) {
            sheet.nextPage();
        }
        sheet.lines(tags.add(type), face, size, PdfSheet.LEFT, sheet.y(), lines);
        sheet.down(height);
    }

    private void facts(Report report) throws IOException {
        PDStructureElement table = tags.add(StandardStructureTypes.TABLE);
        sheet.rule(PdfSheet.LEFT, sheet.y(), FACT_WIDTH, 0.8f, 0);
        sheet.down(PdfSheet.MM);
        for (Report.Fact fact : report.facts()) {
            PDStructureElement row = tags.add(table, StandardStructureTypes.TR);
            List<String> names = bold.wrapped(fact.name(), FACT_NAMES - 2 * PdfSheet.MM, PdfTable.SIZE);
            List<String> words = plain.wrapped(fact.words(), FACT_WIDTH - FACT_NAMES, PdfTable.SIZE);
            float height = Math.max(names.size(), words.size()) * PdfTable.SIZE * PdfSheet.LEADING + PdfSheet.MM;
            if (height > sheet.left()) {
                sheet.nextPage();
            }
            sheet.lines(tags.heading(row, "Row"), bold, PdfTable.SIZE, PdfSheet.LEFT, sheet.y(), names);
            sheet.lines(
                    tags.add(row, StandardStructureTypes.TD),
                    plain,
                    PdfTable.SIZE,
                    PdfSheet.LEFT + FACT_NAMES,
                    sheet.y(),
                    words);
            sheet.down(height);
        }
        sheet.rule(PdfSheet.LEFT, sheet.y(), FACT_WIDTH, 0.8f, 0);
    }

    private void section(Section section) throws IOException {
        PdfTable table = new PdfTable(sheet, tags, plain, bold, section);
        float heading = (HEADING_SIZE + 2 * PdfTable.SIZE) * PdfSheet.LEADING + 6 * PdfSheet.MM;
        if (section.opensPage() && !sheet.isAtTop() || heading + table.least() > sheet.left()) {
            sheet.nextPage();
        } else {
            sheet.down(6 * PdfSheet.MM);
        }
        float top = sheet.y();
        bookmark(section.name());
        float width = section.picture() == null ? PdfSheet.WIDTH : PdfSheet.WIDTH - PICTURE_SIDE - 6 * PdfSheet.MM;
        text(StandardStructureTypes.H2, serif, HEADING_SIZE, section.name(), width);
        text(StandardStructureTypes.P, plain, PdfTable.SIZE, section.sentence(), width);
        sheet.down(1.5f * PdfSheet.MM);
        if (section.picture() != null) {
            picture(section.picture(), top);
        }
        if (!section.rows().isEmpty()) {
            table.write();
        }
    }

    private void picture(Picture picture, float top) throws IOException {
        PDStructureElement figure = tags.add(StandardStructureTypes.Figure);
        figure.setAlternateDescription(picture.says());
        sheet.picture(figure, picture, PdfSheet.LEFT + PdfSheet.WIDTH, top, PICTURE_SIDE);
        sheet.down(Math.max(0, PICTURE_SIDE + 2 * PdfSheet.MM - (top - sheet.y())));
    }

    private void bookmark(String name) {
        PDPageFitWidthDestination there = new PDPageFitWidthDestination();
        there.setPage(sheet.page());
        there.setTop((int) sheet.y());
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(name);
        item.setDestination(there);
        outline.addLast(item);
    }
}
