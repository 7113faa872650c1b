package org.ohmstead.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.intake.check.LaidOut;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.Severity;
import org.ohmstead.intake.file.SurveySheet;

/** A file on its way through the stages: what each has found, and how far it came. */
final class Passage {

    private final Handover handover;
    private final List<Remark> remarks = new ArrayList<>();
    private Stage stage = Stage.RECEIVED;
    private @Nullable SurveySheet sheet;
    private @Nullable StringBlueprint blueprint;
    private @Nullable LaidOut readings;

    Passage(Handover handover) {
        this.handover = handover;
    }

    Handover handover() {
        return handover;
    }

    void remark(Collection<Remark> made) {
        remarks.addAll(made);
    }

    void read(SurveySheet read) {
        sheet = read;
        stage = Stage.READ;
    }

    void matched(StringBlueprint found) {
        blueprint = found;
        stage = Stage.MATCHED;
    }

    void checked(LaidOut laidOut) {
        readings = laidOut;
        stage = Stage.CHECKED;
    }

    Stage stage() {
        return stage;
    }

    List<Remark> remarks() {
        return List.copyOf(remarks);
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
    LaidOut readings() {
        return readings;
    }

    /** Accepted unless a remark holds or refuses it. */
    UploadState verdict() {
        Severity gravest =
                remarks.stream().map(Remark::severity).max(Severity::compareTo).orElse(Severity.NOTE);
        return switch (gravest) {
            case REFUSE -> UploadState.REFUSED;
            case HOLD -> UploadState.HELD;
            case DOUBT, NOTE -> UploadState.ACCEPTED;
        };
    }
}
