package org.ohmstead.intake;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ohmstead.fleet.LinkView;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.intake.check.EarlierSurvey;
import org.ohmstead.intake.check.Expectation;
import org.ohmstead.intake.check.ExpectedJar;
import org.ohmstead.intake.file.TakenAt;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.springframework.stereotype.Component;

/** Puts together what is known of a string before its new survey is looked at. */
@Component
class Expectations {

    /** A baseline is taken about six months after the initial charge (Exide/GNB 92.30 §9.7). */
    private static final int MONTHS_TO_BASELINE = 5;

    /** How many earlier surveys a string is recognised by. */
    static final int RECENT = 6;

    private final SurveyLedger ledger;
    private final Neighbours neighbours;
    private final Clock clock;

    Expectations(SurveyLedger ledger, Neighbours neighbours, Clock clock) {
        this.neighbours = neighbours;
        this.ledger = ledger;
        this.clock = clock;
    }

    Expectation of(Passage passage) {
        StringBlueprint blueprint = Objects.requireNonNull(passage.blueprint());
        TakenAt takenAt = Objects.requireNonNull(
                Objects.requireNonNull(passage.sheet()).facts().takenAt());
        List<SurveyRecord> surveys = others(passage, blueprint);
        Instant instant = takenAt.instant(blueprint.site().timeZone());
        return new Expectation(
                blueprint.site().timeZone(),
                blueprint.string().positions(),
                blueprint.links().stream().mapToInt(LinkView::straps).toArray(),
                jar(blueprint.jarType().entry()),
                blueprint.string().inServiceOn(),
                last(surveys, instant).map(Expectations::earlier).orElse(null),
                baseline(surveys, blueprint.string().inServiceOn())
                        .map(Expectations::earlier)
                        .orElse(null),
                surveys.stream().map(survey -> survey.facts().takenAt()).toList(),
                recent(surveys, instant),
                neighbours.of(blueprint.string()),
                clock.instant());
    }

    /** What the string is known by; a survey that is to be corrected is no measure of its correction. */
    private List<SurveyRecord> others(Passage passage, StringBlueprint blueprint) {
        Correction correction = passage.handover().correction();
        return ledger.surveysOf(blueprint.string().id()).stream()
                .filter(survey -> correction == null || survey.id() != correction.surveyId())
                .toList();
    }

    private static Optional<SurveyRecord> last(List<SurveyRecord> surveys, Instant before) {
        return surveys.stream()
                .filter(survey -> survey.facts().takenAt().isBefore(before))
                .reduce((first, second) -> second);
    }

    private static List<EarlierSurvey> recent(List<SurveyRecord> surveys, Instant before) {
        List<SurveyRecord> until = surveys.stream()
                .filter(survey -> survey.facts().takenAt().isBefore(before))
                .toList();
        return until.subList(Math.max(0, until.size() - RECENT), until.size()).stream()
                .map(Expectations::earlier)
                .toList();
    }

    private static Optional<SurveyRecord> baseline(List<SurveyRecord> surveys, LocalDate inServiceOn) {
        LocalDate settled = inServiceOn.plusMonths(MONTHS_TO_BASELINE);
        return surveys.stream()
                .filter(survey -> !survey.facts().takenOn().isBefore(settled))
                .findFirst()
                .or(() -> surveys.stream().findFirst());
    }

    static EarlierSurvey earlier(SurveyRecord survey) {
        SurveyFacts facts = survey.facts();
        return new EarlierSurvey(
                facts.takenAt(),
                Objects.requireNonNullElse(facts.instrument(), ""),
                facts.ohmicKind(),
                facts.ohmicHertz(),
                facts.ambientCelsius(),
                survey.readings().ohmic(),
                survey.readings().volts(),
                survey.readings().linkMicroohms());
    }

    private static ExpectedJar jar(JarTypeEntry type) {
        Double reference = type.referenceOhmic();
        return new ExpectedJar(
                type.technology(),
                type.cellsPerJar(),
                type.ratedAmpereHours(),
                reference == null ? Double.NaN : reference,
                type.referenceOhmicKind());
    }
}
