package org.ohmstead.intake.file;

import java.util.List;

/**
 * What reading a file came to, beside its sheets.
 *
 * @param encoding name of the character encoding; empty when the file is not text
 * @param sheets how many sheets were read
 * @param findings those that concern the file and no sheet of it
 */
public record FileReading(String encoding, int sheets, List<Finding> findings) {

    public FileReading {
        findings = List.copyOf(findings);
    }
}
