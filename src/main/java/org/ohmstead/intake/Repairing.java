package org.ohmstead.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ohmstead.fleet.LinkView;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.intake.check.Place;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.intake.file.Finding;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.repair.Ground;
import org.ohmstead.intake.repair.Step;
import org.ohmstead.kernel.Refused;

/** The stage in which the repairs in force are replayed over what was read. */
final class Repairing {

    private Repairing() {}

    static Ground ground(StringBlueprint blueprint) {
        return new Ground(blueprint.links().stream().mapToInt(LinkView::straps).toArray());
    }

    /** Never ends the passage: a repair that fits no more holds the survey. */
    static boolean repair(Passage passage) {
        SurveySheet read = Objects.requireNonNull(passage.sheet());
        Ground ground = ground(Objects.requireNonNull(passage.blueprint()));
        SurveySheet put = read;
        for (Step step : passage.steps()) {
            try {
                put = step.on(put, ground);
            } catch (Refused misfit) {
                Place place = new Place(step.words(), 0, 0);
                passage.remark(
                        List.of(Remark.of(RemarkCode.REPAIR_MISFITS, place, String.valueOf(misfit.getMessage()), "")));
            }
        }
        List<Finding> answered = new ArrayList<>(read.findings());
        answered.removeAll(put.findings());
        passage.strike(answered.stream()
                .map(finding -> Remark.of(RemarkCode.VALUE_LOST, finding))
                .toList());
        passage.repaired(put);
        return true;
    }
}
