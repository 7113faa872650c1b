package org.ohmstead.reports.render;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;

/** Writes on the pages of a document, A4 across, from the top down. All lengths are points. */
final class PdfSheet {

    static final float MM = 72f / 25.4f;
    static final float LEFT = 14 * MM;
    static final float WIDTH = PDRectangle.A4.getHeight() - 2 * LEFT;
    static final float LEADING = 1.3f;

    private static final float TOP = PDRectangle.A4.getWidth() - 15 * MM;
    private static final float BOTTOM = 17 * MM;
    private static final float FOOT = 9 * MM;
    private static final float FOOT_SIZE = 8;
    private static final float FOOT_GREY = 0.2f;

    private final PDDocument document;
    private final PdfTags tags;
    private final Typeface plain;
    private PDPage page;
    private PDPageContentStream content;
    private float y;

    PdfSheet(PDDocument document, PdfTags tags, Typeface plain) throws IOException {
        this.document = document;
        this.tags = tags;
        this.plain = plain;
        this.page = blank();
        this.content = new PDPageContentStream(document, page);
        this.y = TOP;
    }

    private PDPage blank() {
        PDPage next = new PDPage(new PDRectangle(PDRectangle.A4.getHeight(), PDRectangle.A4.getWidth()));
        next.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
        document.addPage(next);
        return next;
    }

    void nextPage() throws IOException {
        content.close();
        page = blank();
        content = new PDPageContentStream(document, page);
        y = TOP;
    }

    PDPage page() {
        return page;
    }

    float y() {
        return y;
    }

    boolean isAtTop() {
        return y == TOP;
    }

    float left() {
        return y - BOTTOM;
    }

    /** The most that any page holds. */
    static float whole() {
        return TOP - BOTTOM;
    }

    void down(float by) {
        y -= by;
    }

    /** Lines of one piece of text, the first with its top at {@code top}. */
    void lines(PDStructureElement is, Typeface face, float size, float x, float top, List<String> lines)
            throws IOException {
        content.beginMarkedContent(COSName.getPDFName(is.getStructureType()), tags.piece(page, is));
        raw(face, size, x, top, lines);
        content.endMarkedContent();
    }

    /** The same flush right at {@code right}. */
    void linesRight(PDStructureElement is, Typeface face, float size, float right, float top, List<String> lines)
            throws IOException {
        content.beginMarkedContent(COSName.getPDFName(is.getStructureType()), tags.piece(page, is));
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            raw(face, size, right - face.width(line, size), top - i * size * LEADING, List.of(line));
        }
        content.endMarkedContent();
    }

    /** What repeats something said before, as a table's heading on its further pages. */
    void repeated(Typeface face, float size, float x, float top, List<String> lines) throws IOException {
        content.beginMarkedContent(COSName.ARTIFACT);
        raw(face, size, x, top, lines);
        content.endMarkedContent();
    }

    private void raw(Typeface face, float size, float x, float top, List<String> lines) throws IOException {
        content.beginText();
        content.setFont(face.font(), size);
        content.setLeading(size * LEADING);
        content.newLineAtOffset(x, top - size);
        for (int i = 0; i < lines.size(); i++) {
            if (i > 0) {
                content.newLine();
            }
            content.showText(lines.get(i));
        }
        content.endText();
    }

    void rule(float x, float at, float width, float thickness, float grey) throws IOException {
        content.beginMarkedContent(COSName.ARTIFACT);
        content.setLineWidth(thickness);
        content.setStrokingColor(grey);
        content.moveTo(x, at);
        content.lineTo(x + width, at);
        content.stroke();
        content.endMarkedContent();
    }

    void box(float x, float top, float width, float height) throws IOException {
        content.beginMarkedContent(COSName.ARTIFACT);
        content.setLineWidth(0.5f);
        content.setStrokingColor(0.3f);
        content.addRect(x, top - height, width, height);
        content.stroke();
        content.endMarkedContent();
    }

    /** Its top right corner where said. */
    void picture(PDStructureElement is, Picture picture, float right, float top, float side) throws IOException {
        content.beginMarkedContent(COSName.getPDFName(is.getStructureType()), tags.piece(page, is));
        float step = side / picture.dark().length;
        for (int row = 0; row < picture.dark().length; row++) {
            for (int column = 0; column < picture.dark()[row].length; column++) {
                if (picture.dark()[row][column]) {
                    content.addRect(right - side + column * step, top - (row + 1) * step, step, step);
                }
            }
        }
        content.fill();
        content.endMarkedContent();
    }

    /** Ends the last page and writes the foot of every one. */
    void finish(String foot) throws IOException {
        content.close();
        int pages = document.getNumberOfPages();
        for (int i = 0; i < pages; i++) {
            String number = i + 1 + " of " + pages;
            content = new PDPageContentStream(
                    document, document.getPage(i), PDPageContentStream.AppendMode.APPEND, true, true);
            content.beginMarkedContent(COSName.ARTIFACT);
            content.setNonStrokingColor(FOOT_GREY);
            raw(
                    plain,
                    FOOT_SIZE,
                    LEFT,
                    FOOT,
                    plain.wrapped(foot, WIDTH * 0.8f, FOOT_SIZE).subList(0, 1));
            raw(plain, FOOT_SIZE, LEFT + WIDTH - plain.width(number, FOOT_SIZE), FOOT, List.of(number));
            content.endMarkedContent();
            content.close();
        }
    }
}
