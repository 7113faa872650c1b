package org.ohmstead.reports.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmstead.reports.render.Section.Column;

class FormsTest {

    private static final LocalDate DAY = LocalDate.parse("2026-09-30");

    private static Report report(String words) {
        return new Report(
                "A quarter & more",
                DAY,
                List.of(new Report.Fact("Time zone", "Europe/London")),
                List.of(new Section(
                        "Lines",
                        "What was done.",
                        List.of(Column.words("Words", 3), Column.number("Change", 1), Column.words("Day", 1)),
                        List.of(List.of(Cell.of(words), Cell.of(-12), Cell.of(DAY))))),
                "Ohmic values show change, not capacity.");
    }

    private static byte[] bytes(BiConsumer<Report, OutputStream> form, Report report) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        form.accept(report, out);
        return out.toByteArray();
    }

    private static String csv(String words) {
        return new String(
                bytes((report, out) -> CsvForm.write(report.section("Lines"), out), report(words)),
                StandardCharsets.UTF_8);
    }

    /** OWASP, "CSV Injection": a cell must not begin with any of these. */
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\tx", "\rx"})
    void wordsThatWouldRunAreMadeHarmlessAndNumbersKeepTheirSign(String words) {
        assertThat(csv(words)).contains("'" + words).contains(",-12,2026-09-30");
    }

    /** RFC 4180 section 2: lines end with CRLF, a quote within quotes is doubled. */
    @Test
    void aCommaAndAQuoteAreQuoted() {
        assertThat(csv("a \"b\", c")).isEqualTo("Words,Change,Day\r\n\"a \"\"b\"\", c\",-12,2026-09-30\r\n");
    }

    @Test
    void theSameContentsGiveTheSameBytesInEveryForm() throws InterruptedException {
        byte[] xlsx = bytes(XlsxForm::write, report("x"));
        byte[] pdf = bytes(PdfForm::write, report("x"));
        Thread.sleep(1100);

        assertThat(bytes(XlsxForm::write, report("x"))).isEqualTo(xlsx);
        assertThat(bytes(PdfForm::write, report("x"))).isEqualTo(pdf);
        assertThat(bytes(PdfForm::write, report("y"))).isNotEqualTo(pdf);
    }

    @Test
    void thePdfSaysEveryWordAndIsTagged() throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes(PdfForm::write, report("Jar 7 < 2.13 V")))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("A quarter & more", "Europe/London", "Jar 7 < 2.13 V", "-12", "1 of 1");
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
    }

    /** Ninety lines and one that is taller than a page, in a table of five pages or so. */
    /** Shares that would leave a day and a title too little room give way; where nothing is to spare they stand. */
    @Test
    void noShortWordIsTornWhereAnotherColumnHasRoom() throws IOException {
        List<Column> columns = List.of(
                Column.words("Placed", 2),
                Column.words("Urgency", 2),
                Column.number("Survey", 2),
                Column.words("Why", 94));
        Report narrow = new Report(
                "Narrow",
                DAY,
                List.of(),
                List.of(new Section(
                        "Jars",
                        "",
                        columns,
                        List.of(List.of(
                                Cell.of(LocalDate.parse("2019-12-01")),
                                Cell.of("Plan"),
                                Cell.of(974),
                                Cell.of("why"))))),
                "");
        try (PDDocument document = Loader.loadPDF(bytes(PdfForm::write, narrow))) {
            assertThat(new PDFTextStripper().getText(document)).contains("2019-12-01", "Urgency", "Survey", "974");
        }
        List<Column> many = IntStream.range(0, 40)
                .mapToObj(i -> Column.words("Unbroken", 1))
                .toList();
        List<Cell> row = many.stream().map(column -> Cell.of("2019-12-01")).toList();
        Report crowded =
                new Report("Crowded", DAY, List.of(), List.of(new Section("Jars", "", many, List.of(row))), "");
        try (PDDocument document = Loader.loadPDF(bytes(PdfForm::write, crowded))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Crowded")
                    .doesNotContain("2019-12-01");
        }
    }

    private static Report longReport() {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < 90; i++) {
            rows.add(List.of(Cell.of("row number " + i), Cell.of(-i), Cell.of(0.0415, 3)));
        }
        rows.add(List.of(Cell.of("much to say ".repeat(900) + "and an end"), Cell.of(1), Cell.NONE));
        Section lines = new Section(
                "Lines",
                "All.",
                List.of(Column.words("Words", 3), Column.number("Change", 1), Column.number("mΩ", 1)),
                rows);
        Picture picture = new Picture("opens the string", new boolean[][] {{true, false}, {false, true}});
        return new Report("Long", DAY, List.of(), List.of(lines, lines.onItsOwnPage(picture)), "End.");
    }

    @Test
    void aLongTableHasItsHeadingOnEveryPageAndLosesNothing() throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes(PdfForm::write, longReport()))) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 1; page < document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(document)).contains("Words", "Change", "mΩ");
            }
            String all = new PDFTextStripper().getText(document);
            assertThat(all.split("row number 89\\b", -1)).hasSize(3);
            assertThat(all.split("much\\s+to\\s+say", -1)).hasSize(1801);
            assertThat(all).contains("0.042", "-89", "End.", document.getNumberOfPages() + " of ");
        }
    }

    /** ISO 32000-1, 14.7.4 and 14.8: whatever is shown belongs to one element of the tree, or repeats or adorns. */
    @Test
    void everyWordBelongsToTheTreeOrOnlyRepeats() throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes(PdfForm::write, longReport()))) {
            for (PDPage page : document.getPages()) {
                PDFMarkedContentExtractor marked = new PDFMarkedContentExtractor();
                marked.processPage(page);
                long inMarks = marked.getMarkedContents().stream()
                        .flatMap(content -> content.getContents().stream())
                        .filter(TextPosition.class::isInstance)
                        .count();
                assertThat(inMarks).isEqualTo(characters(document, page)).isPositive();
                COSArray parents = parents(document, page.getStructParents());
                assertThat(marked.getMarkedContents().stream()
                                .filter(content -> !"Artifact".equals(content.getTag()))
                                .map(PDMarkedContent::getMCID)
                                .toList())
                        .containsExactlyElementsOf(
                                IntStream.range(0, parents.size()).boxed().toList());
            }
        }
    }

    private static COSArray parents(PDDocument document, int key) {
        COSArray numbers = (COSArray) document.getDocumentCatalog()
                .getStructureTreeRoot()
                .getCOSObject()
                .getCOSDictionary(COSName.PARENT_TREE)
                .getDictionaryObject(COSName.NUMS);
        assertThat(numbers.getInt(2 * key)).isEqualTo(key);
        return (COSArray) numbers.getObject(2 * key + 1);
    }

    private static long characters(PDDocument document, PDPage page) throws IOException {
        AtomicLong count = new AtomicLong();
        PDFTextStripper counting = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition text) {
                count.incrementAndGet();
            }
        };
        int number = document.getPages().indexOf(page) + 1;
        counting.setStartPage(number);
        counting.setEndPage(number);
        counting.getText(document);
        return count.get();
    }

    @Test
    void whatTheFontLacksIsSaidToBeMissing() throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes(PdfForm::write, report("24.6 µΩ ± 2 °C → \u4e2d")))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("24.6 µΩ ± 2 °C")
                    .contains("?");
        }
    }

    @Test
    void theWorkbookKeepsNumbersAndDaysTyped() throws IOException {
        String sheet = part(bytes(XlsxForm::write, report("=1+1")), "xl/worksheets/sheet2.xml");

        assertThat(sheet).contains("<v>-12</v>").doesNotContain("<f>");
        // 30 September 2026 is day 46295 of the 1900 date system (ECMA-376 part 1, 18.17.4.1)
        assertThat(sheet).contains("<v>46295");
    }

    private static String part(byte[] zip, String name) throws IOException {
        try (ZipInputStream parts = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = parts.getNextEntry(); entry != null; entry = parts.getNextEntry()) {
                if (entry.getName().equals(name)) {
                    return new String(parts.readAllBytes(), StandardCharsets.UTF_8);
                }
            }
        }
        throw new IllegalArgumentException(name);
    }
}
