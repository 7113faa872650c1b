package org.ohmstead.assessment;

import java.time.Instant;
import org.ohmstead.assessment.model.StringJudgement;

/**
 * The assessment in force of a string.
 *
 * @param inputFingerprint SHA-256 over all inputs, in hexadecimal
 */
public record AssessmentView(
        long id, Instant assessedAt, String engineVersion, String inputFingerprint, StringJudgement judgement) {

    AssessmentView with(StringJudgement other) {
        return new AssessmentView(id, assessedAt, engineVersion, inputFingerprint, other);
    }
}
