package org.ohmstead.assessment;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.kernel.Urgency;

/**
 * What would have been said of a string as of one of its surveys, knowing nothing later.
 *
 * @param jars positions that asked for anything, with what they asked
 * @param links ordinals likewise
 * @param riskOn the date by risk, null when the longest interval would have done
 */
public record ReplayedDay(
        long surveyId,
        LocalDate asOf,
        Urgency urgency,
        String headline,
        List<Unit> jars,
        List<Unit> links,
        @Nullable LocalDate recheckBy,
        @Nullable LocalDate riskOn) {

    /** @param risk chance within twelve months, null while nothing was forecast */
    public record Unit(
            int number, Urgency urgency, @Nullable Double risk) {}

    static ReplayedDay of(StringJudgement judgement, long surveyId) {
        return new ReplayedDay(
                surveyId,
                judgement.asOf(),
                judgement.urgency(),
                judgement.headline(),
                judgement.jars().stream()
                        .filter(jar -> jar.urgency() != Urgency.CLEAR)
                        .map(ReplayedDay::unit)
                        .toList(),
                judgement.links().stream()
                        .filter(link -> link.urgency() != Urgency.CLEAR)
                        .map(ReplayedDay::unit)
                        .toList(),
                judgement.recheckBy(),
                judgement.riskDate() == null ? null : judgement.riskDate().on());
    }

    private static Unit unit(JarJudgement jar) {
        return new Unit(
                jar.position(),
                jar.urgency(),
                jar.forecast() == null ? null : jar.forecast().risk());
    }

    private static Unit unit(LinkJudgement link) {
        return new Unit(
                link.ordinal(),
                link.urgency(),
                link.forecast() == null ? null : link.forecast().risk());
    }
}
