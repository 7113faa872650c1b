package org.ohmstead.intake.map;

import java.util.List;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.SurveySheet;

/**
 * What reading a file by a map came to.
 *
 * @param titlesFound how many of the map's titles the file has; none when the map does not fit
 * @param findings those that concern the file and no survey of it
 */
public record MappedFile(List<SurveySheet> sheets, int titlesFound, List<Finding> findings) {

    public MappedFile {
        sheets = List.copyOf(sheets);
        findings = List.copyOf(findings);
    }

    /** Whether the file has every title that the map names, and readings under them. */
    public boolean fits() {
        return titlesFound > 0 && !sheets.isEmpty();
    }
}
