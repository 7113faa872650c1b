package org.ohmstead.intake.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.ohmstead.intake.file.Archive;
import org.ohmstead.intake.file.ArchiveEntry;
import org.ohmstead.intake.file.ArchiveLimits;
import org.ohmstead.intake.file.BadArchive;
import org.ohmstead.intake.file.ByteSource;
import org.ohmstead.intake.file.FileReading;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.Weight;

/** Files that somebody made to do harm; each is refused with an answer that says what it is. */
@Timeout(120)
class HostileFilesTest {

    private static final String SHEET = "xl/worksheets/sheet1.xml";
    private static final byte[] CSV = "ohmstead survey sheet,1\n".getBytes(StandardCharsets.UTF_8);

    @Test
    void aWorksheetThatUnfoldsAThousandfoldIsNotUnfolded() throws IOException {
        assertThat(workbookWith(SHEET, new byte[30 << 20])).contains("unfolds to more than 200 times");
    }

    @Test
    void aWorkbookThatIsLargerThanItTellsIsNotReadOn() throws IOException {
        Zip zip = workbookWithout(SHEET);
        zip.with(SHEET, sheet("<row r=\"1\"/>".repeat(100_000)), true, told -> told.size = 2_000);

        assertThat(answer(zip.bytes())).contains("is longer than announced");
    }

    /** Twenty parts of 31 MB each, one by one within every limit but that of the sum. */
    @Test
    void aWorkbookWhoseSumIsTooLargeIsNotUnfolded() throws IOException {
        Zip zip = workbookWithout("");
        for (int i = 0; i < 20; i++) {
            zip.with("xl/extra" + i + ".xml", new byte[10], true, told -> {
                told.size = 31 << 20;
                told.packed = 4 << 20;
            });
        }

        assertThat(answer(zip.bytes())).contains("The archive is");
    }

    @Test
    void aFileOutsideIsNotLookedAt() throws IOException {
        Path secret = Files.createTempFile("outside", ".txt");
        Files.writeString(secret, "2.345");
        String xml = "<!DOCTYPE worksheet [<!ENTITY outside SYSTEM \"" + secret.toUri() + "\">]>"
                + new String(
                        sheet("<row r=\"1\"><c t=\"inlineStr\"><is><t>&outside;</t></is></c></row>"),
                        StandardCharsets.UTF_8);

        String answer = workbookWith(SHEET, xml.getBytes(StandardCharsets.UTF_8));

        assertThat(answer)
                .contains("not well-formed, or that points outside of it")
                .doesNotContain("2.345");
        Files.delete(secret);
    }

    @Test
    void aDefinitionOfADocumentElsewhereIsNotFetched() throws IOException {
        String xml = "<!DOCTYPE worksheet SYSTEM \"http://localhost:1/none.dtd\"><worksheet/>";

        assertThat(workbookWith(SHEET, xml.getBytes(StandardCharsets.UTF_8))).contains("points outside of it");
    }

    /** The "billion laughs": ten entities, each ten times the one before. */
    @Test
    void entitiesThatUnfoldEachOtherAreNotUnfolded() throws IOException {
        StringBuilder xml = new StringBuilder("<!DOCTYPE w [<!ENTITY e0 \"ha\">");
        for (int i = 1; i <= 10; i++) {
            xml.append("<!ENTITY e")
                    .append(i)
                    .append(" \"")
                    .append(("&e" + (i - 1) + ";").repeat(10))
                    .append("\">");
        }
        xml.append(
                "]><worksheet><sheetData><row r=\"1\"><c t=\"inlineStr\"><is><t>&e10;</t></is></c></row></sheetData></worksheet>");

        assertThat(workbookWith(SHEET, xml.toString().getBytes(StandardCharsets.UTF_8)))
                .contains("not well-formed");
    }

    @Test
    void sharedWordsBeyondMeasureAreNotHeld() throws IOException {
        byte[] words = ("<sst>" + "<si/>".repeat(600_000) + "</sst>").getBytes(StandardCharsets.UTF_8);
        Zip zip = workbookWithout("xl/sharedStrings.xml");
        zip.with("xl/sharedStrings.xml", words, false, told -> {});

        assertThat(answer(zip.bytes())).contains("more than 500000 words");
    }

    /** A workbook that names one large part two hundred times would be read two hundred times. */
    @Test
    void aWorksheetThatIsNamedAgainAndAgainIsReadOnce() throws IOException {
        StringBuilder book = new StringBuilder("<workbook xmlns:r=\"r\"><sheets>");
        for (int i = 0; i < 200; i++) {
            book.append("<sheet name=\"s").append(i).append("\" r:id=\"rId1\"/>");
        }
        book.append("</sheets></workbook>");
        Zip zip = new Zip();
        zip.with("xl/workbook.xml", book.toString().getBytes(StandardCharsets.UTF_8));
        zip.with(
                "xl/_rels/workbook.xml.rels",
                "<Relationships><Relationship Id=\"rId1\" Target=\"worksheets/sheet1.xml\"/></Relationships>"
                        .getBytes(StandardCharsets.UTF_8));
        zip.with(SHEET, sheet("<row><c t=\"str\"><v>other</v></c></row>".repeat(10)));
        List<Finding> passedOver = new ArrayList<>();

        FileReading reading = SheetReader.read(ByteSource.of(zip.bytes()), sheet -> {});

        reading.findings().stream()
                .filter(finding -> finding.weight() == Weight.NOTED)
                .forEach(passedOver::add);
        assertThat(passedOver).hasSize(1);
    }

    @Test
    void anArchiveWithTooManyFilesIsRefusedByItsTable() {
        assertThatThrownBy(() -> open(Zip.of("walk.csv", CSV).bytes(60_000)))
                .isInstanceOf(BadArchive.class)
                .hasMessageContaining("60000 entries, at most 50000");
    }

    @Test
    void anArchiveThatTellsOfMoreFilesThanItHasIsRefused() {
        assertThatThrownBy(() -> open(Zip.of("walk.csv", CSV).bytes(2)))
                .isInstanceOf(BadArchive.class)
                .hasMessageContaining("shorter than it says");
    }

    @Test
    void aFileOfAnArchiveThatIsTooLargeIsRefusedByItsTable() {
        byte[] lying = new Zip()
                .with("walk.csv", CSV, true, told -> told.size = 33L << 20)
                .bytes();

        assertThatThrownBy(() -> open(lying)).hasMessageContaining("\"walk.csv\" is more than 32 MB unpacked");
    }

    @Test
    void aDenseFileOfAnArchiveIsRefusedByItsTable() {
        assertThatThrownBy(() -> open(Zip.of("walk.csv", new byte[8 << 20]).bytes()))
                .hasMessageContaining("unfolds to more than 200 times");
    }

    @Test
    void aFileThatIsNotAsLongAsToldIsRefusedWhileItIsUnpacked() throws IOException {
        for (int told : new int[] {1, CSV.length - 1, CSV.length + 1}) {
            byte[] lying = new Zip()
                    .with("walk.csv", CSV, true, entry -> entry.size = told)
                    .bytes();

            assertThatThrownBy(() -> unpackAll(lying)).isInstanceOf(BadArchive.class);
        }
    }

    @Test
    void aFileWithAnotherChecksumThanToldIsRefused() {
        byte[] lying = new Zip().with("walk.csv", CSV, true, told -> told.crc++).bytes();

        assertThatThrownBy(() -> unpackAll(lying)).hasMessageContaining("is not what was packed");
    }

    @Test
    void twoNamesForOneFileAreRefused() {
        byte[] lying = new Zip()
                .with("one.csv", CSV)
                .with("two.csv", CSV, true, told -> told.nameInTable = "three.csv")
                .bytes();

        assertThatThrownBy(() -> open(lying)).hasMessageContaining("called otherwise by its own header");
    }

    @Test
    void filesThatOverlapAreRefused() {
        byte[] lying = new Zip()
                .with("walk.csv", CSV)
                .with("walk.csv", CSV, true, told -> told.at = 0)
                .bytes();

        assertThatThrownBy(() -> open(lying)).hasMessageContaining("overlaps another entry");
    }

    @Test
    void anEncryptedFileIsRefused() {
        byte[] locked =
                new Zip().with("walk.csv", CSV, true, told -> told.flags = 1).bytes();

        assertThatThrownBy(() -> open(locked)).hasMessageContaining("is encrypted");
    }

    @Test
    void aNameThatLeadsOutsideIsShownButNeverFollowed() throws IOException {
        Archive archive = open(Zip.of("../../outside.csv", CSV).bytes());

        assertThat(archive.entries()).extracting(ArchiveEntry::name).containsExactly("../../outside.csv");
        assertThat(archive.open(archive.entries().get(0)).readAllBytes()).isEqualTo(CSV);
        assertThat(Path.of("../../outside.csv")).doesNotExist();
    }

    private static Archive open(byte[] archive) throws IOException {
        return Archive.open(ByteBuffer.wrap(archive), ArchiveLimits.HISTORY);
    }

    private static void unpackAll(byte[] archive) throws IOException {
        Archive opened = open(archive);
        for (ArchiveEntry entry : opened.entries()) {
            try (InputStream unpacked = opened.open(entry)) {
                unpacked.transferTo(OutputStream.nullOutputStream());
            }
        }
    }

    private static byte[] sheet(String rows) {
        return ("<worksheet><sheetData>" + rows + "</sheetData></worksheet>").getBytes(StandardCharsets.UTF_8);
    }

    private static String workbookWith(String part, byte[] content) throws IOException {
        return answer(workbookWithout(part).with(part, content).bytes());
    }

    private static Zip workbookWithout(String left) throws IOException {
        Zip zip = new Zip();
        for (Zip.Part part : Zip.parts(Files.readAllBytes(Path.of("docs/examples/survey-sheet/61-workbook.xlsx")))) {
            if (!part.name().equals(left)) {
                zip.with(part.name(), part.content());
            }
        }
        return zip;
    }

    /** Everything that is said of a file from which no sheet comes. */
    private static String answer(byte[] bytes) throws IOException {
        StringBuilder answer = new StringBuilder();
        FileReading reading = SheetReader.read(ByteSource.of(bytes), sheet -> {});
        reading.findings()
                .forEach(finding -> answer.append(finding.weight())
                        .append(' ')
                        .append(finding.flaw())
                        .append('\n'));
        assertThat(answer.toString()).contains("UNREADABLE");
        return answer.toString();
    }
}
