package org.ohmstead.assessment;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Advice;
import org.ohmstead.assessment.model.Doubt;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.RiskDate;
import org.ohmstead.assessment.model.StringFigures;
import org.ohmstead.assessment.model.StringJudgement;

/** What the {@code detail} column of an assessment holds. */
record StringDetail(
        String limitsVersion,
        StringFigures figures,
        List<Reason> reasons,
        List<Doubt> doubts,
        List<Advice> advice,
        @Nullable RiskDate riskDate) {

    static StringDetail of(StringJudgement judgement) {
        return new StringDetail(
                judgement.limitsVersion(),
                judgement.figures(),
                judgement.reasons(),
                judgement.doubts(),
                judgement.advice(),
                judgement.riskDate());
    }
}
