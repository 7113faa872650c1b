package org.ohmstead.reports.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
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
