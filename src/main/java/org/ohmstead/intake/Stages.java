package org.ohmstead.intake;

import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.ohmstead.intake.check.CheckedSurvey;
import org.ohmstead.intake.check.Checks;
import org.ohmstead.intake.check.Thresholds;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.map.ColumnMap;
import org.springframework.stereotype.Component;

/** The way in, stage by stage: read, match, check. A stage that the file does not reach is left out. */
@Component
class Stages {

    private final SheetReading reading;
    private final StringMatching matching;
    private final Expectations expectations;
    private final CorrectedSurvey corrected;
    private final UploadBook book;

    Stages(
            SheetReading reading,
            StringMatching matching,
            CorrectedSurvey corrected,
            Expectations expectations,
            UploadBook book) {
        this.corrected = corrected;
        this.book = book;
        this.reading = reading;
        this.matching = matching;
        this.expectations = expectations;
    }

    Passage run(Handover handover) {
        return run(handover, reading::read);
    }

    /** By this column map, whatever else would fit. */
    Passage run(Handover handover, ColumnMap map) {
        return run(handover, passage -> reading.readBy(passage, map));
    }

    private Passage run(Handover handover, Predicate<Passage> read) {
        Passage passage = new Passage(handover);
        List<Predicate<Passage>> inOrder = List.of(read, matching::match, corrected::look, this::check);
        inOrder.stream().allMatch(stage -> stage.test(passage));
        return passage;
    }

    private boolean check(Passage passage) {
        book.queueUpFor(Objects.requireNonNull(passage.blueprint()).string().id());
        SurveySheet sheet = Objects.requireNonNull(passage.sheet());
        CheckedSurvey checked = Checks.check(sheet, expectations.of(passage), Thresholds.defaults());
        passage.remark(checked.remarks());
        passage.checked(checked.readings());
        return true;
    }
}
