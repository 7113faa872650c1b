package org.ohmstead.intake.repair;

import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.kernel.Refused;

/**
 * One repair of a survey as it was read. Steps are replayed in their order over the reading of the raw file, which itself
 * is never altered.
 */
public sealed interface Step
        permits AssignTo,
                Disregard,
                FixReading,
                FixTime,
                IgnoreRow,
                InsertGap,
                LeaveOut,
                Reverse,
                ScaleColumn,
                SetKind,
                SwapJars,
                UseMap {

    /**
     * The sheet with this step done.
     *
     * @throws Refused when the string has no such place
     */
    SurveySheet on(SurveySheet sheet, Ground ground);

    /** What it does, as people are told of it. */
    String words();

    /** Whether it puts a person's word in the place of a reading, so that it needs a reason and an engineer. */
    default boolean needsJudgement() {
        return false;
    }
}
