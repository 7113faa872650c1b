package org.ohmstead.intake.repair;

import java.util.Arrays;

/** The steps by the names under which they are kept and asked for. */
public enum StepKind {
    REVERSE(Reverse.class),
    INSERT_GAP(InsertGap.class),
    LEAVE_OUT(LeaveOut.class),
    SWAP_JARS(SwapJars.class),
    IGNORE_ROW(IgnoreRow.class),
    SCALE_COLUMN(ScaleColumn.class),
    SET_KIND(SetKind.class),
    ASSIGN_TO(AssignTo.class),
    USE_MAP(UseMap.class),
    FIX_READING(FixReading.class),
    FIX_TIME(FixTime.class),
    DISREGARD(Disregard.class);

    private final Class<? extends Step> type;

    StepKind(Class<? extends Step> type) {
        this.type = type;
    }

    public Class<? extends Step> type() {
        return type;
    }

    public static StepKind of(Step step) {
        return Arrays.stream(values())
                .filter(kind -> kind.type == step.getClass())
                .findFirst()
                .orElseThrow();
    }
}
