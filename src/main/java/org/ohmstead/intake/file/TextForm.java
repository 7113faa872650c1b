package org.ohmstead.intake.file;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Flaw;

/**
 * How a file writes its characters.
 *
 * @param charset null when the file is not text that can be read
 * @param markBytes length of the byte order mark to skip
 * @param finding why it is not text, or what had to be assumed; null when there is nothing to say
 */
public record TextForm(
        @Nullable Charset charset, int markBytes, @Nullable Finding finding) {

    static final TextForm UTF_8 = new TextForm(StandardCharsets.UTF_8, 0, null);
    static final TextForm UTF_8_MARKED = new TextForm(StandardCharsets.UTF_8, 3, null);
    static final TextForm UTF_16_LITTLE = new TextForm(StandardCharsets.UTF_16LE, 2, null);
    static final TextForm UTF_16_BIG = new TextForm(StandardCharsets.UTF_16BE, 2, null);

    static TextForm notText(String message, String remedy) {
        return new TextForm(null, 0, Finding.unreadable(Flaw.ofFile(message, remedy)));
    }
}
