package org.ohmstead.worklist.model;

import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Rule;
import org.ohmstead.kernel.Urgency;

/** Which work a rule's finding asks for: the table of {@code docs/worklist.md}. */
final class RuleTable {

    private RuleTable() {}

    /** Null when such a finding asks for nothing. */
    static @Nullable WorkKind kindOf(Rule rule, Urgency asks) {
        return switch (asks) {
            case CLEAR -> null;
            case RECHECK -> WorkKind.MEASURE_AGAIN;
            case PLAN, ACT -> work(rule);
        };
    }

    private static WorkKind work(Rule rule) {
        return switch (rule) {
            case JAR_OVER_BASELINE, JAR_UNDER_BASELINE, JAR_OVER_LOT, JAR_STEP, JAR_RISK -> WorkKind.REPLACE_JAR;
            case JAR_VOLTS_LOW -> WorkKind.EQUALISE;
            case JAR_VOLTS_OFF_MEDIAN, JAR_HOT, STRING_FLOAT, STRING_RIPPLE, STRING_TEMPERATURE_SPREAD, STRING_DROP ->
                WorkKind.INVESTIGATE;
            case LINK_OVER_BASELINE, LINK_OVER_KIND, LINK_INSTALLATION, LINK_DROP, LINK_RISK -> WorkKind.REMAKE_LINK;
            case STRING_RISEN, STRING_AGE -> WorkKind.TEST_CAPACITY;
            case JAR_NOT_READ, LINK_NOT_READ, JAR_READ_APART, LINK_READ_APART, STRING_UNSURVEYED ->
                WorkKind.MEASURE_AGAIN;
        };
    }
}
