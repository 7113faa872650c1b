package org.ohmstead.onsite;

import static org.ohmstead.access.Permission.HAND_IN_SURVEYS;
import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.ohmstead.access.Access;
import org.ohmstead.assessment.AssessmentView;
import org.ohmstead.assessment.Assessments;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.Handover;
import org.ohmstead.intake.Intake;
import org.ohmstead.intake.Receipt;
import org.ohmstead.ledger.SurveyLedger;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What a crew takes along to a string, and the walk it types in there. */
@Service
public class Walks {

    private final FleetRegister register;
    private final SurveyLedger ledger;
    private final Assessments assessments;
    private final Intake intake;
    private final Access access;
    private final Clock clock;

    Walks(
            FleetRegister register,
            SurveyLedger ledger,
            Assessments assessments,
            Intake intake,
            Access access,
            Clock clock) {
        this.register = register;
        this.ledger = ledger;
        this.assessments = assessments;
        this.intake = intake;
        this.access = access;
        this.clock = clock;
    }

    /** @throws org.ohmstead.kernel.NotFound when there is no such string within reach */
    @Transactional(readOnly = true)
    public Walk walk(long stringId) {
        access.require(SEE_ESTATE);
        StringBlueprint blueprint = register.blueprint(stringId);
        return new WalkBuilder(
                        blueprint,
                        ledger.surveysOf(stringId),
                        assessments
                                .find(stringId)
                                .map(AssessmentView::judgement)
                                .orElse(null),
                        assessments.limits())
                .build(clock.instant());
    }

    /** The strings in service of a site, for taking along in one go. */
    @Transactional(readOnly = true)
    public List<StringView> stringsAt(String siteCode) {
        access.require(SEE_ESTATE);
        return register.stringsOf(siteCode).stream()
                .filter(string -> string.retiredOn() == null)
                .toList();
    }

    /**
     * Hands in what was typed, as a survey sheet on the way that every file takes.
     *
     * @param upload named by the form, so that a form sent twice makes no second survey
     * @param typed see {@link WalkSheet}
     */
    @Transactional
    public Receipt handIn(UUID upload, long stringId, Map<String, String> typed) {
        access.require(HAND_IN_SURVEYS);
        Walk walk = walk(stringId);
        byte[] sheet = WalkSheet.of(walk, typed).getBytes(StandardCharsets.UTF_8);
        return intake.receive(new Handover(upload, WalkSheet.fileName(walk, typed), sheet, stringId));
    }
}
