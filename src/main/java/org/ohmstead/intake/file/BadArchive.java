package org.ohmstead.intake.file;

import java.io.IOException;
import org.ohmstead.kernel.Flaw;

/** An archive that is not opened: broken, lying about itself, or larger than its limits. */
public final class BadArchive extends IOException {

    private static final long serialVersionUID = 1L;

    private final transient Flaw flaw;

    BadArchive(String message, String remedy) {
        super(message);
        flaw = Flaw.ofFile(message, remedy);
    }

    static BadArchive broken(String what) {
        return new BadArchive(
                "The archive is broken or untrue about itself: " + what + ".",
                "Make the archive or workbook anew and hand in that file.");
    }

    static BadArchive tooLarge(String what) {
        return new BadArchive(
                "The archive is larger than is taken here: " + what + ".", "Hand it in in several smaller archives.");
    }

    public Flaw flaw() {
        return flaw;
    }
}
