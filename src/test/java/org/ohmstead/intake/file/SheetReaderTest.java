package org.ohmstead.intake.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SheetReaderTest {

    private static final Path PLAIN = Path.of("docs/examples/survey-sheet/01-plain.csv");

    @Test
    void noBytesMakeTheReaderThrow() throws IOException {
        byte[] plain = Files.readAllBytes(PLAIN);
        Random random = new Random(20261118);
        for (int run = 0; run < 20_000; run++) {
            byte[] bytes = mutated(plain, random);
            List<SurveySheet> sheets = new ArrayList<>();

            FileReading reading = SheetReader.read(ByteSource.of(bytes), sheets::add);

            assertThat(reading.sheets()).isEqualTo(sheets.size());
            assertThat(sheets.isEmpty() && reading.findings().isEmpty()).isFalse();
        }
    }

    @Test
    void aHundredMegabytesOfSheetsAreReadOneByOne() throws IOException {
        byte[] plain = (Files.readString(PLAIN) + "\n").getBytes(StandardCharsets.UTF_8);
        int copies = 100_000_000 / plain.length;
        AtomicInteger rows = new AtomicInteger();

        FileReading reading = SheetReader.read(
                () -> repeated(plain, copies),
                sheet -> rows.addAndGet(sheet.rows().size()));

        assertThat(reading.sheets()).isEqualTo(copies);
        assertThat(rows).hasValue(copies * 5);
    }

    @Test
    void anEndlessLineIsRefusedInsteadOfHeld() throws IOException {
        byte[] start = "ohmstead survey sheet,1\nnote,".getBytes(StandardCharsets.UTF_8);
        byte[] more = "x".repeat(100_000).getBytes(StandardCharsets.UTF_8);

        FileReading reading =
                SheetReader.read(() -> new SequenceInputStream(repeated(start, 1), repeated(more, 500)), sheet -> {});

        assertThat(reading.findings()).extracting(Finding::weight).contains(Weight.UNREADABLE);
        assertThat(reading.findings().get(0).flaw().line()).isEqualTo(2);
    }

    @Test
    void aThousandFindingsAreCountedNotListed() throws IOException {
        String rows = String.join("\n", Collections.nCopies(1_000, "1,bad"));
        String sheet = "ohmstead survey sheet,1\ntaken at,2026-11-18\nohmic kind,impedance\nposition,jar mΩ\n" + rows;
        List<SurveySheet> sheets = new ArrayList<>();

        SheetReader.read(ByteSource.of(sheet.getBytes(StandardCharsets.UTF_8)), sheets::add);

        List<Finding> findings = sheets.get(0).findings();
        assertThat(findings).hasSize(101);
        assertThat(findings.get(100).flaw().message()).contains("901 more findings");
    }

    @Test
    void moreThanTwoThousandRowsAreNoSurvey() throws IOException {
        StringBuilder sheet = new StringBuilder(
                "ohmstead survey sheet,1\ntaken at,2026-11-18\nohmic kind,impedance\nposition,jar mΩ\n");
        IntStream.rangeClosed(1, 2_001)
                .forEach(position -> sheet.append(position).append(",0.4\n"));
        List<SurveySheet> sheets = new ArrayList<>();

        SheetReader.read(ByteSource.of(sheet.toString().getBytes(StandardCharsets.UTF_8)), sheets::add);

        assertThat(sheets.get(0).isReadable()).isFalse();
        assertThat(sheets.get(0).findings())
                .extracting(finding -> finding.flaw().message())
                .anyMatch(message -> message.contains("more than 2000 rows"));
    }

    @Test
    void strapsCountFromOne() throws IOException {
        String sheet =
                "ohmstead survey sheet,1\ntaken at,2026-11-18\nohmic kind,impedance\nposition,jar mΩ,link 0 µΩ\n1,0.4,24\n";
        List<SurveySheet> sheets = new ArrayList<>();

        SheetReader.read(ByteSource.of(sheet.getBytes(StandardCharsets.UTF_8)), sheets::add);

        assertThat(sheets.get(0).findings())
                .extracting(finding -> finding.flaw().message())
                .contains("A survey sheet has no such column.");
    }

    @Test
    void aSourceThatFailsIsNotMistakenForABadFile() {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("disk gone");
            }
        };

        assertThatThrownBy(() -> SheetReader.read(() -> broken, sheet -> {})).hasMessage("disk gone");
    }

    private static byte[] mutated(byte[] plain, Random random) {
        byte[] bytes = plain.clone();
        int changes = 1 + random.nextInt(8);
        for (int i = 0; i < changes; i++) {
            bytes[random.nextInt(bytes.length)] =
                    (byte) (random.nextBoolean() ? random.nextInt(256) : ",;\"\n\r\t.-#0".charAt(random.nextInt(10)));
        }
        return Arrays.copyOf(bytes, random.nextInt(bytes.length) + 1);
    }

    private static InputStream repeated(byte[] bytes, int times) {
        return new InputStream() {
            private long at;

            @Override
            public int read() {
                return at >= (long) bytes.length * times ? -1 : bytes[(int) (at++ % bytes.length)] & 0xFF;
            }

            @Override
            public int read(byte[] into, int from, int length) {
                if (length == 0) {
                    return 0;
                }
                int written = 0;
                for (int next = read(); next >= 0; next = written < length ? read() : -1) {
                    into[from + written++] = (byte) next;
                    if (written == length) {
                        break;
                    }
                }
                return written == 0 ? -1 : written;
            }
        };
    }
}
