package org.ohmstead.intake;

import java.util.List;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.repair.Step;
import org.ohmstead.intake.repair.StepKind;

/**
 * A repair with what it would come to, by the very stages of storing it.
 *
 * @param because the remark that asks for it
 * @param gone remarks that it answers
 * @param come remarks that it raises
 * @param moved places whose readings change
 */
public record Offer(
        RemarkCode because,
        StepKind kind,
        Step step,
        String words,
        Outcome after,
        List<Remark> gone,
        List<Remark> come,
        List<MovedPlace> moved) {}
