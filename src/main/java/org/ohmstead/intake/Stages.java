package org.ohmstead.intake;

import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.ohmstead.intake.check.Checks;
import org.ohmstead.intake.check.Expectation;
import org.ohmstead.intake.check.Thresholds;
import org.ohmstead.intake.file.SurveySheet;
import org.ohmstead.intake.map.ColumnMap;
import org.springframework.stereotype.Component;

/** The way in, stage by stage: read, match, repair, check. A stage that the file does not reach is left out. */
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

    Passage run(Passage passage) {
        return walk(passage, List.of(reading::read, matching::match, this::queueUp));
    }

    /** By this column map, whatever else would fit. */
    Passage run(Passage passage, ColumnMap map) {
        return walk(passage, List.of(read -> reading.readBy(read, map), matching::match, this::queueUp));
    }

    /** The same without waiting for others who hand in for the string: nothing may be stored of it. */
    Passage rehearse(Passage passage) {
        return walk(passage, List.of(reading::read, matching::match));
    }

    /** Goes on with one of the surveys of a file, which was read already. */
    Passage runRead(Passage passage, SurveySheet sheet) {
        return walk(passage, List.of(part -> reading.take(part, sheet), matching::match, this::queueUp));
    }

    /** Only which string it is of. */
    Passage match(Passage passage, SurveySheet sheet) {
        if (reading.take(passage, sheet)) {
            matching.match(passage);
        }
        return passage;
    }

    private Passage walk(Passage passage, List<Predicate<Passage>> first) {
        List<Predicate<Passage>> then = List.of(corrected::look, Repairing::repair, this::check);
        if (first.stream().allMatch(stage -> stage.test(passage))) {
            then.stream().allMatch(stage -> stage.test(passage));
        }
        return passage;
    }

    private boolean queueUp(Passage passage) {
        book.queueUpFor(Objects.requireNonNull(passage.blueprint()).string().id());
        return true;
    }

    private boolean check(Passage passage) {
        SurveySheet sheet = Objects.requireNonNull(passage.sheet());
        Expectation expected = expectations.of(passage);
        passage.checked(Checks.check(sheet, expected, Thresholds.defaults()), expected);
        return true;
    }
}
