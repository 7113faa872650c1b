package org.ohmstead.reports.render;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** A table on paper: its heading on every page, no row torn unless it is taller than a page. */
final class PdfTable {

    static final float SIZE = 8.5f;

    private static final float PAD = 0.8f * PdfSheet.MM;
    private static final float GAP = 1.8f * PdfSheet.MM;
    private static final float NUMBER_GAP = 1.2f * PdfSheet.MM;
    private static final float BLANK_HEIGHT = 6 * PdfSheet.MM;
    private static final float ROUNDING = 0.01f;
    private static final int LONG_WORD = 14;
    private static final int LOOKED_AT = 60;

    private final PdfSheet sheet;
    private final PdfTags tags;
    private final Typeface plain;
    private final Typeface bold;
    private final Section section;
    private final float[] left;

    PdfTable(PdfSheet sheet, PdfTags tags, Typeface plain, Typeface bold, Section section) {
        this.sheet = sheet;
        this.tags = tags;
        this.plain = plain;
        this.bold = bold;
        this.section = section;
        this.left = left();
    }

    /** By the columns' shares, but none so narrow that it tears a short word, where the others have room to give. */
    private float[] left() {
        int columns = section.columns().size();
        float whole = section.columns().stream().mapToInt(Section.Column::share).sum();
        float[] wide = new float[columns];
        float[] least = new float[columns];
        float lacking = 0;
        float spare = 0;
        for (int i = 0; i < columns; i++) {
            wide[i] = PdfSheet.WIDTH * section.columns().get(i).share() / whole;
            least[i] = narrowest(i);
            lacking += Math.max(0, least[i] - wide[i]);
            spare += Math.max(0, wide[i] - least[i]);
        }
        float given = lacking < spare ? lacking / spare : 0;
        float[] left = new float[columns + 1];
        left[0] = PdfSheet.LEFT;
        for (int i = 0; i < columns; i++) {
            boolean needs = wide[i] < least[i];
            float width = given == 0 ? wide[i] : needs ? least[i] : wide[i] - (wide[i] - least[i]) * given;
            left[i + 1] = left[i] + width;
        }
        return left;
    }

    /** That a column's title and first cells can be set in without tearing a word; long words may be torn. */
    private float narrowest(int column) {
        float words = widest(section.columns().get(column).title(), bold);
        for (List<Cell> row :
                section.rows().subList(0, Math.min(LOOKED_AT, section.rows().size()))) {
            words = Math.max(words, widest(row.get(column).shown(), plain));
        }
        return words + GAP + (section.columns().get(column).numeric() ? NUMBER_GAP : 0) + ROUNDING;
    }

    private static float widest(String text, Typeface face) {
        float widest = 0;
        for (String word : face.showable(text).strip().split(" +")) {
            if (word.length() <= LONG_WORD) {
                widest = Math.max(widest, face.width(word, SIZE));
            }
        }
        return widest;
    }

    /** What must stand together at least: the heading and a row. */
    float least() {
        return height(titles())
                + (section.rows().isEmpty() ? 0 : height(wrapped(section.rows().get(0))));
    }

    void write() throws IOException {
        PDStructureElement table = tags.add(StandardStructureTypes.TABLE);
        head(table);
        for (List<Cell> row : section.rows()) {
            row(tags.add(table, StandardStructureTypes.TR), wrapped(row));
        }
    }

    private List<List<String>> titles() {
        return java.util.stream.IntStream.range(0, section.columns().size())
                .mapToObj(i -> bold.wrapped(section.columns().get(i).title(), width(i), SIZE))
                .toList();
    }

    private List<List<String>> wrapped(List<Cell> row) {
        return java.util.stream.IntStream.range(0, row.size())
                .mapToObj(i -> plain.wrapped(row.get(i).shown(), width(i), SIZE))
                .toList();
    }

    private float width(int column) {
        return left[column + 1]
                - left[column]
                - GAP
                - (section.columns().get(column).numeric() ? NUMBER_GAP : 0);
    }

    /** Where numbers end: a little before the words of the next column. */
    private float right(int column) {
        return left[column + 1] - GAP - NUMBER_GAP;
    }

    private float height(List<List<String>> cells) {
        int lines = cells.stream().mapToInt(List::size).max().orElse(1);
        float text = lines * SIZE * PdfSheet.LEADING + 2 * PAD;
        return hasBlanks() ? Math.max(BLANK_HEIGHT, text) : text;
    }

    private boolean hasBlanks() {
        return section.columns().stream().anyMatch(column -> column.kind() == Section.Column.Kind.BLANK);
    }

    private boolean isUntitled() {
        return section.columns().stream().allMatch(column -> column.title().isEmpty());
    }

    private void head(PDStructureElement table) throws IOException {
        if (isUntitled()) {
            return;
        }
        List<List<String>> titles = titles();
        PDStructureElement row = tags.add(table, StandardStructureTypes.TR);
        float height = height(titles);
        for (int i = 0; i < titles.size(); i++) {
            PDStructureElement cell = tags.heading(row, PDTableAttributeObject.SCOPE_COLUMN);
            cell(cell, bold, i, titles.get(i));
        }
        underline(height);
    }

    private void headAgain() throws IOException {
        if (isUntitled()) {
            return;
        }
        List<List<String>> titles = titles();
        for (int i = 0; i < titles.size(); i++) {
            float top = sheet.y() - PAD;
            for (String line : titles.get(i)) {
                float x = section.columns().get(i).numeric() ? right(i) - bold.width(line, SIZE) : left[i];
                sheet.repeated(bold, SIZE, x, top, List.of(line));
                top -= SIZE * PdfSheet.LEADING;
            }
        }
        underline(height(titles));
    }

    private void underline(float height) throws IOException {
        sheet.down(height);
        sheet.rule(PdfSheet.LEFT, sheet.y(), PdfSheet.WIDTH, 0.8f, 0);
    }

    private void row(PDStructureElement row, List<List<String>> cells) throws IOException {
        if (height(cells) > sheet.left() && !sheet.isAtTop()) {
            turn();
        }
        List<PDStructureElement> pieces = cells.stream()
                .map(cell -> tags.add(row, StandardStructureTypes.TD))
                .toList();
        List<List<String>> left = cells;
        int fitting = fitting();
        while (left.stream().anyMatch(lines -> lines.size() > fitting)) {
            int now = fitting;
            place(
                    pieces,
                    left.stream()
                            .map(lines -> lines.subList(0, Math.min(now, lines.size())))
                            .toList());
            left = left.stream()
                    .map(lines -> lines.subList(Math.min(now, lines.size()), lines.size()))
                    .toList();
            turn();
        }
        place(pieces, left);
    }

    private int fitting() {
        return Math.max(1, (int) ((sheet.left() - 2 * PAD) / (SIZE * PdfSheet.LEADING)));
    }

    private void turn() throws IOException {
        sheet.nextPage();
        headAgain();
    }

    private void place(List<PDStructureElement> pieces, List<List<String>> cells) throws IOException {
        float height = height(cells);
        for (int i = 0; i < cells.size(); i++) {
            if (section.columns().get(i).kind() == Section.Column.Kind.BLANK) {
                sheet.box(left[i], sheet.y() - 0.4f * PdfSheet.MM, width(i), height - 0.8f * PdfSheet.MM);
            }
            cell(pieces.get(i), plain, i, cells.get(i));
        }
        sheet.down(height);
        sheet.rule(PdfSheet.LEFT, sheet.y(), PdfSheet.WIDTH, 0.3f, 0.6f);
    }

    private void cell(PDStructureElement is, Typeface face, int column, List<String> lines) throws IOException {
        if (lines.isEmpty() || lines.size() == 1 && lines.get(0).isEmpty()) {
            return;
        }
        float top = sheet.y() - PAD;
        if (section.columns().get(column).numeric()) {
            sheet.linesRight(is, face, SIZE, right(column), top, lines);
        } else {
            sheet.lines(is, face, SIZE, left[column], top, lines);
        }
    }
}
