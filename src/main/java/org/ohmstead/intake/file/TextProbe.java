package org.ohmstead.intake.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.util.Arrays;
import org.ohmstead.kernel.Flaw;

/** Finds out how a file writes its characters: one pass over its bytes, in bounded memory. */
public final class TextProbe {

    private static final int CHUNK = 1 << 16;
    private static final String SAVE_AS_CSV = "Save the survey sheet as CSV (UTF-8) and hand in that file.";

    private final byte[] start = new byte[4];
    private final Utf8Check utf8 = new Utf8Check();
    private long count;
    private int line = 1;
    private int controlAtLine;
    private int undefinedAtLine;

    private TextProbe() {}

    public static TextForm probe(ByteSource source) throws IOException {
        TextProbe probe = new TextProbe();
        try (InputStream bytes = source.open()) {
            byte[] chunk = new byte[CHUNK];
            for (int read = bytes.read(chunk); read >= 0; read = bytes.read(chunk)) {
                probe.accept(chunk, read);
            }
        }
        return probe.verdict();
    }

    private void accept(byte[] chunk, int length) {
        for (int i = 0; i < length; i++) {
            int octet = chunk[i] & 0xFF;
            if (count < start.length) {
                start[(int) count] = chunk[i];
            }
            count++;
            look(octet);
        }
    }

    private void look(int octet) {
        utf8.accept(octet);
        if (octet == '\n') {
            line++;
        } else if (octet < ' ' && octet != '\t' && octet != '\r' && octet != '\f' && controlAtLine == 0) {
            controlAtLine = line;
        } else if (isUndefinedInWindows1252(octet) && undefinedAtLine == 0) {
            undefinedAtLine = line;
        }
    }

    private static boolean isUndefinedInWindows1252(int octet) {
        return octet == 0x81 || octet == 0x8D || octet == 0x8F || octet == 0x90 || octet == 0x9D;
    }

    private TextForm verdict() {
        if (count == 0) {
            return TextForm.notText(
                    "The file is empty.", "Check that the export finished, then hand the file in again.");
        }
        if (starts(0xFF, 0xFE)) {
            return TextForm.UTF_16_LITTLE;
        }
        if (starts(0xFE, 0xFF)) {
            return TextForm.UTF_16_BIG;
        }
        if (controlAtLine > 0) {
            return binary();
        }
        return utf8.isWellFormed() ? utf8Form() : windows1252();
    }

    private TextForm utf8Form() {
        return starts(0xEF, 0xBB, 0xBF) ? TextForm.UTF_8_MARKED : TextForm.UTF_8;
    }

    private TextForm binary() {
        if (starts('P', 'K')) {
            return TextForm.notText("This is a workbook or an archive, not a text file.", SAVE_AS_CSV);
        }
        if (starts('%', 'P', 'D', 'F')) {
            return TextForm.notText("This is a PDF document, not a text file.", SAVE_AS_CSV);
        }
        if (isEveryOtherByteZero()) {
            return TextForm.notText("This is UTF-16 text without its byte order mark.", SAVE_AS_CSV);
        }
        return TextForm.notText(
                "This is not a text file: line " + controlAtLine + " holds bytes that no text holds.", SAVE_AS_CSV);
    }

    private boolean isEveryOtherByteZero() {
        boolean little = start[0] != 0 && start[1] == 0 && start[2] != 0 && start[3] == 0;
        boolean big = start[0] == 0 && start[1] != 0 && start[2] == 0 && start[3] != 0;
        return count >= start.length && (little || big);
    }

    private TextForm windows1252() {
        if (undefinedAtLine > 0) {
            return TextForm.notText(
                    "The file's characters are neither UTF-8 nor Windows-1252: line " + undefinedAtLine
                            + " holds bytes that neither knows.",
                    SAVE_AS_CSV);
        }
        Finding noted = new Finding(
                Weight.NOTED,
                Flaw.ofFile("The file is not UTF-8; it was read as Windows-1252.", "Save as CSV UTF-8 next time."));
        return new TextForm(Charset.forName("windows-1252"), 0, noted);
    }

    private boolean starts(int... octets) {
        byte[] expected = new byte[octets.length];
        for (int i = 0; i < octets.length; i++) {
            expected[i] = (byte) octets[i];
        }
        return count >= octets.length && Arrays.equals(Arrays.copyOf(start, octets.length), expected);
    }
}
