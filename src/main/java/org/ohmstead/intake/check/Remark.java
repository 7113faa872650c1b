package org.ohmstead.intake.check;

import org.ohmstead.intake.file.Finding;
import org.ohmstead.kernel.Flaw;

/**
 * What was found in a survey.
 *
 * @param seen with its unit; empty when there is nothing to show
 * @param expected with its unit; empty when there is no expectation to show
 */
public record Remark(RemarkCode code, Place place, String seen, String expected, String message, String remedy) {

    public static Remark of(RemarkCode code, Place place, String seen, String expected) {
        return new Remark(code, place, seen, expected, code.message(), code.remedy());
    }

    /** A finding of the reader, as a remark of that code. */
    public static Remark of(RemarkCode code, Finding finding) {
        Flaw flaw = finding.flaw();
        Place place = new Place(flaw.place(), flaw.line(), flaw.column());
        return new Remark(code, place, flaw.value() == null ? "" : flaw.value(), "", flaw.message(), flaw.remedy());
    }

    public Severity severity() {
        return code.severity();
    }
}
