package org.ohmstead.reports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.ohmstead.access.Access;
import org.ohmstead.access.Person;
import org.ohmstead.access.Reach;
import org.ohmstead.access.Role;
import org.ohmstead.intake.file.SheetReader;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Sha256;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.programme.RoundView;
import org.ohmstead.programme.Rounds;
import org.ohmstead.programme.SuggestedRound;
import org.ohmstead.support.ServiceTest;
import org.ohmstead.support.SettableClock;
import org.ohmstead.worklist.NewWork;
import org.ohmstead.worklist.WorkList;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkKind;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.ActiveProfiles;

/** The first round that is proposed for the demo's Upland; today is 10 March 2026. */
@ServiceTest
@ActiveProfiles({"test", "demo"})
class RoundFilesTest {

    @Autowired
    private Rounds rounds;

    @Autowired
    private RoundFiles files;

    @Autowired
    private WorkList work;

    @Autowired
    private Access access;

    private RoundView planned() {
        var today = java.time.LocalDate.ofInstant(SettableClock.START, java.time.ZoneOffset.UTC);
        return access.asSystem("demo test", () -> {
            SuggestedRound first = rounds.suggest(today, today.plusMonths(3), 3, "UPLAND")
                    .rounds()
                    .get(0);
            List<Long> ids = rounds.adopt(today, today.plusMonths(3), 3, "UPLAND", List.of(first.key()));
            return rounds.round(ids.get(0));
        });
    }

    private Map<String, byte[]> pack(RoundView round) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        access.asSystem("demo test", () -> {
            try {
                files.write(round.id(), RoundFilesTest::address, out);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
        Map<String, byte[]> found = new LinkedHashMap<>();
        try (ZipInputStream entries = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            for (ZipEntry entry = entries.getNextEntry(); entry != null; entry = entries.getNextEntry()) {
                found.put(entry.getName(), entries.readAllBytes());
            }
        }
        return found;
    }

    @Test
    void thePackHasThePaperAndAReadableSheetOfEveryString() throws IOException {
        RoundView round = planned();
        Map<String, byte[]> pack = pack(round);
        String manifest = new String(pack.remove("SHA256SUMS"), StandardCharsets.UTF_8);
        pack.forEach((name, content) ->
                assertThat(manifest).contains(HexFormat.of().formatHex(Sha256.of(content)) + "  " + name + "\n"));
        assertThat(pack).hasSize(round.stringIds().size() + 1);
        for (Map.Entry<String, byte[]> file : pack.entrySet()) {
            if (file.getKey().endsWith(".csv")) {
                List<SurveySheet> sheets = new ArrayList<>();
                SheetReader.read(() -> new ByteArrayInputStream(file.getValue()), sheets::add);
                assertThat(sheets)
                        .singleElement()
                        .satisfies(sheet -> assertThat(sheet.rows()).isNotEmpty());
            } else {
                assertThat(file.getKey()).contains(round.siteCode(), "Europe-London");
                String paper = text(file.getValue());
                assertThat(paper).contains("Before you touch anything", "Take along", round.siteName(), "Now µΩ");
                Cautions.BEFORE.forEach(
                        caution -> assertThat(paper).contains(caution.substring(0, caution.indexOf(' ', 30))));
                round.tasks().forEach(task -> assertThat(paper).contains(task.activity()));
            }
        }
    }

    @Test
    void thePaperNamesTheOpenWorkAtItsStrings() throws IOException {
        RoundView round = planned();
        long string = round.stringIds().get(0);
        access.asSystem(
                "demo test",
                () -> work.raise(new NewWork(
                        string,
                        WorkKind.INVESTIGATE,
                        Subject.Kind.JAR,
                        3,
                        Urgency.ACT,
                        null,
                        "Vent plug cracked, seen today.")));
        String paper = text(pack(round).entrySet().stream()
                .filter(file -> file.getKey().endsWith(".pdf"))
                .findFirst()
                .orElseThrow()
                .getValue());
        assertThat(paper).contains("open work", "Investigate", "jar 3", "Vent plug cracked");
    }

    private static String address(long stringId) {
        return "https://batteries.example/strings/" + stringId + "/walk";
    }

    /** Read back by a decoder, not by the encoder that wrote it. */
    @Test
    void theCodeOnThePaperOpensTheString() throws Exception {
        RoundView round = planned();
        byte[] paper = pack(round).entrySet().stream()
                .filter(file -> file.getKey().endsWith(".pdf"))
                .findFirst()
                .orElseThrow()
                .getValue();
        List<String> read = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(paper)) {
            PDFTextStripper stripper = new PDFTextStripper();
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                stripper.setStartPage(page + 1);
                stripper.setEndPage(page + 1);
                if (stripper.getText(document).contains(": to do")) {
                    read.add(decoded(new PDFRenderer(document).renderImageWithDPI(page, 110, ImageType.RGB)));
                }
            }
        }
        assertThat(read)
                .containsExactlyElementsOf(
                        round.stringIds().stream().map(RoundFilesTest::address).toList());
    }

    private static String decoded(BufferedImage page) throws Exception {
        int[] pixels = page.getRGB(0, 0, page.getWidth(), page.getHeight(), null, 0, page.getWidth());
        BinaryBitmap bitmap = new BinaryBitmap(
                new HybridBinarizer(new RGBLuminanceSource(page.getWidth(), page.getHeight(), pixels)));
        return new QRCodeReader()
                .decode(bitmap, Map.of(DecodeHintType.TRY_HARDER, true))
                .getText();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void thePaperSaysWordForWordWhatThePagesCaution() throws IOException {
        String pages = Files.readString(Path.of("src/main/resources/templates/fragments/parts.html"));
        assertThat(Cautions.BEFORE)
                .isNotEmpty()
                .allSatisfy(caution -> assertThat(pages).contains("<li>" + caution + "</li>"));
        assertThat(pages.split("<li>", -1)).hasSize(Cautions.BEFORE.size() + 1);
        assertThat(pages).contains(Cautions.RULES);
    }

    @Test
    void aRoundOutOfReachHasNoFiles() {
        RoundView round = planned();
        Person other = new Person(9, "crew", "Crew", Role.CREW, new Reach(false, Set.of(-1L)));
        assertThatThrownBy(() -> access.as(other, () -> files.name(round.id()))).isInstanceOf(NotFound.class);
    }
}
