package org.ohmstead.intake;

import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.check.Severity;

/**
 * A remark as it was made when the file came in.
 *
 * @param line of the file, counted from 1; 0 when it points at none
 * @param column counted from 1; 0 when it points at none
 */
public record RemarkView(
        RemarkCode code,
        Severity severity,
        int line,
        int column,
        String place,
        String seen,
        String expected,
        String message,
        String remedy) {}
