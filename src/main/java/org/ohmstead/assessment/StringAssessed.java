package org.ohmstead.assessment;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.StringJudgement;

/**
 * A string was looked at again. Published before the commit.
 *
 * @param surveyedOn day of its last survey, null without any
 * @param recheckBy by when someone must read again, null when nobody need
 * @param riskOn by when the forecast wants someone there, null when it gives no date
 * @param judgement as it is in force now
 */
public record StringAssessed(
        long stringId,
        @Nullable LocalDate surveyedOn,
        @Nullable LocalDate recheckBy,
        @Nullable LocalDate riskOn,
        StringJudgement judgement) {}
