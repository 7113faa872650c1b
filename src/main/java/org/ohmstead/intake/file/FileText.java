package org.ohmstead.intake.file;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.util.List;

/** Shows a file's text as the reader took it, for people to look at. */
public final class FileText {

    private static final int LONGEST_LINE = 500;

    private FileText() {}

    /** The first lines; none when the file is not text. Characters that cannot be read are shown as such. */
    public static List<String> firstLines(byte[] bytes, int most) {
        try {
            TextForm form = TextProbe.probe(ByteSource.of(bytes));
            Charset charset = form.charset();
            if (charset == null) {
                return List.of();
            }
            int mark = form.markBytes();
            ByteArrayInputStream text = new ByteArrayInputStream(bytes, mark, bytes.length - mark);
            try (BufferedReader lines = new BufferedReader(new InputStreamReader(text, charset))) {
                return lines.lines().limit(most).map(FileText::shown).toList();
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("Bytes in memory cannot fail to be read", impossible);
        }
    }

    private static String shown(String line) {
        return line.length() <= LONGEST_LINE ? line : line.substring(0, LONGEST_LINE) + "…";
    }
}
