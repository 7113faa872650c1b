package org.ohmstead.intake;

import java.time.Instant;
import org.ohmstead.intake.repair.Step;
import org.ohmstead.intake.repair.StepKind;

/**
 * A repair as it was made.
 *
 * @param words as the person was told of it
 * @param takenBack whether it was undone later
 */
public record RepairView(
        int ordinal, StepKind kind, Step step, String words, String reason, Instant at, String by, boolean takenBack) {}
