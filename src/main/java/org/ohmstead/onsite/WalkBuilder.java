package org.ohmstead.onsite;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.intake.check.Thresholds;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.ledger.SurveyFacts;
import org.ohmstead.ledger.SurveyRecord;

/** Puts a walk together from the register, the ledger and the judgement in force. */
final class WalkBuilder {

    private static final int MOST_TEST_SETS = 6;

    private final StringBlueprint blueprint;
    private final List<SurveyRecord> surveys;
    private final @Nullable StringJudgement judgement;
    private final Limits limits;

    WalkBuilder(
            StringBlueprint blueprint, List<SurveyRecord> surveys, @Nullable StringJudgement judgement, Limits limits) {
        this.blueprint = blueprint;
        this.surveys = surveys;
        this.judgement = judgement;
        this.limits = limits;
    }

    Walk build(Instant asOf) {
        JarTypeEntry type = blueprint.jarType().entry();
        OhmicKind kind = kind();
        return new Walk(
                blueprint.string().id(),
                blueprint.string().title(),
                blueprint.site().code(),
                blueprint.site().name(),
                blueprint.string().name(),
                blueprint.site().entry().accessNotes(),
                blueprint.site().timeZone().getId(),
                Places.build(blueprint),
                kind.words(),
                kind.unit(),
                hertz(type),
                last(),
                testSets(),
                Places.jars(blueprint, judgement, kind, limits),
                new LinkPlaces(blueprint, surveys, judgement, limits).all(),
                WalkLimits.of(limits, Thresholds.defaults(), type.cellsPerJar(), type.ratedAmpereHours()),
                Cautions.ALL,
                asOf);
    }

    private OhmicKind kind() {
        if (!surveys.isEmpty()) {
            return surveys.get(surveys.size() - 1).facts().ohmicKind();
        }
        OhmicKind reference = blueprint.jarType().entry().referenceOhmicKind();
        return reference == null ? OhmicKind.IMPEDANCE : reference;
    }

    private @Nullable Double hertz(JarTypeEntry type) {
        return surveys.isEmpty()
                ? type.referenceOhmicHertz()
                : Rounded.orNull(surveys.get(surveys.size() - 1).facts().ohmicHertz());
    }

    private Walk.@Nullable LastSurvey last() {
        if (surveys.isEmpty()) {
            return null;
        }
        SurveyFacts facts = surveys.get(surveys.size() - 1).facts();
        return new Walk.LastSurvey(
                facts.takenOn(),
                facts.takenBy(),
                Rounded.orNull(facts.ambientCelsius()),
                Rounded.orNull(facts.stringVolts()),
                Rounded.orNull(facts.floatAmps()),
                Rounded.orNull(facts.rippleAmps()),
                Rounded.orNull(facts.injectedAmps()));
    }

    private List<Walk.TestSet> testSets() {
        Map<String, Walk.TestSet> used = new LinkedHashMap<>();
        for (int i = surveys.size() - 1; i >= 0; i--) {
            SurveyFacts facts = surveys.get(i).facts();
            String serial = facts.instrument();
            if (serial != null) {
                used.putIfAbsent(serial, new Walk.TestSet(serial, facts.calibrationDue()));
            }
        }
        return new ArrayList<>(used.values()).subList(0, Math.min(MOST_TEST_SETS, used.size()));
    }
}
