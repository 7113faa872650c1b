package org.ohmstead.assessment;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.JarTypeFacts;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.assessment.model.estate.CapacityLimit;
import org.ohmstead.assessment.model.estate.ReferenceLevel;
import org.ohmstead.kernel.OhmicKind;
import org.springframework.stereotype.Component;

/** Puts what was learned of a jar type into what is judged. A walk, and every judgement on arrival, reads it anew. */
@Component
class LearnedValues {

    private final LessonTable table;
    private volatile @Nullable Map<String, Lesson.Learned> known;

    LearnedValues(LessonTable table) {
        this.table = table;
    }

    void refresh() {
        known = table.inForce();
    }

    StringHistory in(StringHistory history) {
        Map<String, Lesson.Learned> seen = known;
        if (seen == null) {
            seen = table.inForce();
            known = seen;
        }
        StringPlan plan = history.plan();
        Lesson.Learned learned = seen.get(plan.jarType().code());
        return learned == null ? history : history.with(plan.with(with(plan.jarType(), learned)));
    }

    private static JarTypeFacts with(JarTypeFacts facts, Lesson.Learned learned) {
        ReferenceLevel reference = learned.reference();
        CapacityLimit limit = learned.limit();
        return facts.learned(
                reference == null ? Double.NaN : reference.value(),
                reference == null ? OhmicKind.IMPEDANCE : reference.kind(),
                limit == null ? Double.NaN : limit.logLimit(),
                limit == null ? Double.NaN : limit.spread());
    }
}
