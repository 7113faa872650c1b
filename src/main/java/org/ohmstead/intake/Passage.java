package org.ohmstead.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.intake.check.CheckedSurvey;
import org.ohmstead.intake.check.Expectation;
import org.ohmstead.intake.check.LaidOut;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.Severity;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.repair.Step;

/** A file, or a part of one, on its way through the stages: what each has found, and how far it came. */
final class Passage {

    private final Handover handover;
    private final int part;
    private final List<Step> steps;
    private final List<Remark> remarks = new ArrayList<>();
    private Stage stage = Stage.RECEIVED;
    private List<SurveySheet> several = List.of();
    private @Nullable SurveySheet sheet;
    private @Nullable StringBlueprint blueprint;
    private @Nullable CheckedSurvey checked;
    private @Nullable Expectation expectation;

    Passage(Handover handover) {
        this(handover, 0, List.of());
    }

    /**
     * @param part which of the file's surveys, counted from 1; 0 when it should hold one only
     * @param steps repairs in force
     */
    Passage(Handover handover, int part, List<Step> steps) {
        this.handover = handover;
        this.part = part;
        this.steps = List.copyOf(steps);
    }

    /** One more passage of the same file, with that repair after those before it. */
    Passage again(Step further) {
        List<Step> all = new ArrayList<>(steps);
        all.add(further);
        return new Passage(handover, part, all);
    }

    Handover handover() {
        return handover;
    }

    int part() {
        return part;
    }

    List<Step> steps() {
        return steps;
    }

    void remark(Collection<Remark> made) {
        remarks.addAll(made);
    }

    /** What a repair has answered is not remarked any more. */
    void strike(Collection<Remark> answered) {
        remarks.removeAll(answered);
    }

    void read(SurveySheet read) {
        sheet = read;
        stage = Stage.READ;
    }

    /** The file holds these surveys, each of which goes on by a passage of its own. */
    void readSeveral(List<SurveySheet> sheets) {
        several = List.copyOf(sheets);
        stage = Stage.READ;
    }

    void matched(StringBlueprint found) {
        blueprint = found;
        stage = Stage.MATCHED;
    }

    void repaired(SurveySheet put) {
        sheet = put;
    }

    void checked(CheckedSurvey survey, Expectation expected) {
        checked = survey;
        expectation = expected;
        remark(survey.remarks());
        stage = Stage.CHECKED;
    }

    Stage stage() {
        return stage;
    }

    List<Remark> remarks() {
        return List.copyOf(remarks);
    }

    List<SurveySheet> several() {
        return several;
    }

    @Nullable
    SurveySheet sheet() {
        return sheet;
    }

    @Nullable
    StringBlueprint blueprint() {
        return blueprint;
    }

    @Nullable
    CheckedSurvey checkedSurvey() {
        return checked;
    }

    @Nullable
    Expectation expectation() {
        return expectation;
    }

    @Nullable
    LaidOut readings() {
        return checked == null ? null : checked.readings();
    }

    /** Accepted unless a remark holds or refuses it. */
    UploadState verdict() {
        if (!several.isEmpty()) {
            return UploadState.IN_PARTS;
        }
        Severity gravest =
                remarks.stream().map(Remark::severity).max(Severity::compareTo).orElse(Severity.NOTE);
        return switch (gravest) {
            case REFUSE -> UploadState.REFUSED;
            case HOLD -> UploadState.HELD;
            case DOUBT, NOTE -> UploadState.ACCEPTED;
        };
    }
}
