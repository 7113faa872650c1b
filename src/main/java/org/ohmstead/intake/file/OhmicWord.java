package org.ohmstead.intake.file;

import java.util.Arrays;
import java.util.Optional;
import org.ohmstead.kernel.OhmicKind;

/** Reads the kind of ohmic value from its word. */
final class OhmicWord {

    static final String CHOICES = "impedance, resistance, conductance";

    private OhmicWord() {}

    static Optional<OhmicKind> read(String text) {
        String plain = Spelling.plain(text);
        return Arrays.stream(OhmicKind.values())
                .filter(kind -> kind.words().equals(plain))
                .findFirst();
    }
}
