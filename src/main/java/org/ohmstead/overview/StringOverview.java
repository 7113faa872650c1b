package org.ohmstead.overview;

import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.assessment.Asked;
import org.ohmstead.assessment.AssessmentView;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.assessment.Overruling;
import org.ohmstead.assessment.model.Advice;
import org.ohmstead.assessment.model.Doubt;
import org.ohmstead.assessment.model.RiskDate;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.ohmstead.programme.NextDateView;
import org.ohmstead.programme.Programme;
import org.ohmstead.programme.rules.NextDate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** A string with its jars, links, surveys and next date, within the reader's reach. */
@Service
@Transactional(readOnly = true)
public class StringOverview {

    /** The page with what its drawings need besides. */
    public record Dossier(StringPage page, StringHistoryView history) {}

    private final FleetRegister register;
    private final SurveyLedger ledger;
    private final Assessments assessments;
    private final Overruling overruling;
    private final Programme programme;
    private final Access access;
    private final Clock clock;

    StringOverview(
            FleetRegister register,
            SurveyLedger ledger,
            Assessments assessments,
            Overruling overruling,
            Programme programme,
            Access access,
            Clock clock) {
        this.register = register;
        this.ledger = ledger;
        this.assessments = assessments;
        this.overruling = overruling;
        this.programme = programme;
        this.access = access;
        this.clock = clock;
    }

    /** @throws NotFound when there is no such string within reach */
    public Dossier string(long stringId) {
        access.require(Permission.SEE_ESTATE);
        StringBlueprint blueprint = register.blueprint(stringId);
        List<SurveyRecord> surveys = ledger.surveysOf(stringId);
        StringPage page = page(blueprint, surveys);
        return new Dossier(page, StringHistories.of(blueprint, surveys, page.jars()));
    }

    /** @throws NotFound when there is no such jar within reach */
    public UnitPage jar(long stringId, int position) {
        access.require(Permission.SEE_ESTATE);
        StringBlueprint blueprint = register.blueprint(stringId);
        if (position < 1 || position > blueprint.string().positions()) {
            throw NotFound.of("jar", position);
        }
        List<SurveyRecord> surveys = ledger.surveysOf(stringId);
        return JarLife.of(page(blueprint, surveys), blueprint, surveys, position);
    }

    /** @throws NotFound when there is no such link within reach */
    public UnitPage link(long stringId, int ordinal) {
        access.require(Permission.SEE_ESTATE);
        StringBlueprint blueprint = register.blueprint(stringId);
        if (ordinal < 0 || ordinal > blueprint.string().positions()) {
            throw NotFound.of("link", ordinal);
        }
        List<SurveyRecord> surveys = ledger.surveysOf(stringId);
        return LinkLife.of(page(blueprint, surveys), blueprint, surveys, ordinal);
    }

    private StringPage page(StringBlueprint blueprint, List<SurveyRecord> surveys) {
        long stringId = blueprint.string().id();
        AssessmentView assessment = assessments.find(stringId).orElse(null);
        Asked asked = assessment == null ? null : overruling.asked(assessment.judgement());
        int positions = blueprint.string().positions();
        List<JarLine> jars = asked == null
                ? Lines.unjudgedJars(blueprint)
                : asked.judgement().jars().stream()
                        .map(jar -> Lines.jar(asked, jar))
                        .toList();
        List<LinkLine> links = asked == null
                ? Lines.unjudgedLinks(blueprint)
                : asked.judgement().links().stream()
                        .map(link -> Lines.link(asked, link, positions))
                        .toList();
        return new StringPage(
                Plates.of(blueprint),
                assessment == null || asked == null ? null : judged(blueprint, assessment, asked, jars, links),
                programme
                        .findNextDate(stringId)
                        .map(next -> due(blueprint, next, assessment))
                        .orElse(null),
                jars,
                links,
                Plates.surveys(surveys));
    }

    private static StringPage.Judged judged(
            StringBlueprint blueprint,
            AssessmentView assessment,
            Asked asked,
            List<JarLine> jars,
            List<LinkLine> links) {
        StringJudgement judgement = assessment.judgement();
        return new StringPage.Judged(
                asked.urgency(),
                StringSentence.of(blueprint.string().name(), asked.urgency(), jars, links),
                judgement.asOf(),
                assessment.assessedAt(),
                Lines.reasons(judgement.reasons()),
                judgement.advice().stream().map(Advice::words).toList(),
                judgement.doubts().stream().map(Doubt::words).toList(),
                StringFacts.of(judgement.figures(), blueprint.string().positions()),
                judgement.urgency(),
                asked.ofString().orElse(null));
    }

    private StringPage.@Nullable Due due(
            StringBlueprint blueprint, NextDateView next, @Nullable AssessmentView assessment) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), blueprint.site().timeZone());
        return new StringPage.Due(
                next.dueOn(),
                ChronoUnit.DAYS.between(today, next.dueOn()),
                next.governs().name(),
                next.reason(),
                next.intervalDueOn(),
                next.governs() == NextDate.Governs.RISK ? riskReason(assessment) : null);
    }

    private static @Nullable String riskReason(@Nullable AssessmentView assessment) {
        RiskDate risk = assessment == null ? null : assessment.judgement().riskDate();
        return risk == null ? null : risk.reason();
    }
}
