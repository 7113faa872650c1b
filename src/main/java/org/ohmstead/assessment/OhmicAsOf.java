package org.ohmstead.assessment;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.access.Access;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.capacity.OhmicBefore;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Judges a string as of a past day, with today's rules and nothing later than the day. */
@Component
class OhmicAsOf implements OhmicBefore {

    private final FleetRegister register;
    private final SurveyLedger ledger;
    private final Judging judging;
    private final Access access;

    OhmicAsOf(FleetRegister register, SurveyLedger ledger, Judging judging, Access access) {
        this.register = register;
        this.ledger = ledger;
        this.judging = judging;
        this.access = access;
    }

    @Override
    @Transactional(readOnly = true)
    public Map<Integer, Asked> asOf(long stringId, LocalDate day) {
        access.require(SEE_ESTATE);
        StringBlueprint blueprint = register.blueprint(stringId);
        List<SurveyRecord> surveys = ledger.surveysOf(stringId).stream()
                .filter(survey -> !survey.facts().takenOn().isAfter(day))
                .toList();
        Map<Integer, Asked> asked = new HashMap<>();
        if (!surveys.isEmpty()) {
            judging.judge(Histories.of(blueprint, surveys, day), null)
                    .judgement()
                    .jars()
                    .forEach(jar -> put(asked, jar));
        }
        return asked;
    }

    private static void put(Map<Integer, Asked> asked, JarJudgement jar) {
        LocalDate readOn = jar.readOn();
        if (readOn != null) {
            asked.put(jar.position(), new Asked(jar.urgency(), jar.changeOnBaseline(), readOn));
        }
    }
}
