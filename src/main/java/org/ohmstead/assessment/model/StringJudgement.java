package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;

/**
 * What is to be said of a string as of its last survey.
 *
 * @param asOf day of the last survey; the day it came into service while there is none
 * @param surveyId the last survey
 * @param limitsVersion of the default limits it was judged with
 * @param headline one sentence
 * @param recheckBy by when someone must read again; null when nobody need before the next round
 * @param riskDate by when the forecast wants another survey; null when the longest interval will do
 * @param reasons of the string as a whole; those of jars and links stand with them
 * @param jars one per position, in order
 * @param links one per ordinal 0..N, in order
 */
public record StringJudgement(
        long stringId,
        LocalDate asOf,
        @Nullable Long surveyId,
        String limitsVersion,
        Urgency urgency,
        String headline,
        @Nullable LocalDate recheckBy,
        @Nullable RiskDate riskDate,
        StringFigures figures,
        List<Reason> reasons,
        List<Doubt> doubts,
        List<Advice> advice,
        List<JarJudgement> jars,
        List<LinkJudgement> links) {

    public StringJudgement {
        reasons = List.copyOf(reasons);
        doubts = List.copyOf(doubts);
        advice = List.copyOf(advice);
        jars = List.copyOf(jars);
        links = List.copyOf(links);
    }

    /** The same with other doubts. */
    public StringJudgement with(List<Doubt> others) {
        return new StringJudgement(
                stringId,
                asOf,
                surveyId,
                limitsVersion,
                urgency,
                headline,
                recheckBy,
                riskDate,
                figures,
                reasons,
                others,
                advice,
                jars,
                links);
    }
}
