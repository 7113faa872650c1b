package org.ohmstead.intake;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.intake.check.Place;
import org.ohmstead.intake.check.Remark;
import org.ohmstead.intake.check.RemarkCode;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.ohmstead.ledger.Withdrawal;
import org.springframework.stereotype.Component;

/** Lets the survey of a corrected file take the place of the one it corrects. */
@Component
class CorrectedSurvey {

    private static final Place PLACE = new Place("the corrected survey", 0, 0);

    private final SurveyLedger ledger;
    private final Access access;

    CorrectedSurvey(SurveyLedger ledger, Access access) {
        this.ledger = ledger;
        this.access = access;
    }

    /** A corrected file that names no string is for the string of the survey it corrects. */
    Handover claim(Handover handover) {
        Correction correction = handover.correction();
        if (correction == null) {
            return handover;
        }
        long stringId = ledger.survey(correction.surveyId()).facts().stringId();
        Long claimed = handover.claimedStringId();
        if (claimed != null && claimed != stringId) {
            throw new Conflict(
                    "Survey " + correction.surveyId() + " is of another string than the file is handed in for.");
        }
        return handover.claiming(stringId);
    }

    /** Whether the one it corrects still counts, and whether the asking person may decide that. Never ends the passage. */
    boolean look(Passage passage) {
        Correction correction = passage.handover().correction();
        if (correction != null) {
            look(passage, correction);
        }
        return true;
    }

    /** Called once the new survey is in the ledger. One that does not count any more is left as it is. */
    void takePlace(Passage passage, long newSurveyId) {
        Correction correction = passage.handover().correction();
        if (correction != null && ledger.survey(correction.surveyId()).stands()) {
            ledger.supersede(correction.surveyId(), newSurveyId, correction.reason());
        }
    }

    /** @throws Conflict when a survey of the very same bytes is to take another's place, unless it took it already */
    void requireSettled(Passage passage, long sameBytesSurveyId) {
        Correction correction = passage.handover().correction();
        if (correction == null
                || isSuccessor(ledger.survey(correction.surveyId()).withdrawal(), sameBytesSurveyId)) {
            return;
        }
        throw new Conflict(
                correction.surveyId() == sameBytesSurveyId
                        ? "Survey " + sameBytesSurveyId + " was made of these very bytes; nothing in them is corrected."
                        : "These very bytes are survey " + sameBytesSurveyId
                                + " already. Let it take the place of survey " + correction.surveyId()
                                + " on that survey's page.");
    }

    private void look(Passage passage, Correction correction) {
        SurveyRecord corrected = ledger.survey(correction.surveyId());
        String seen = "survey " + corrected.id() + " of " + corrected.facts().takenOn();
        if (!corrected.stands()) {
            passage.remark(List.of(Remark.of(
                    RemarkCode.CORRECTS_WITHDRAWN, PLACE, seen + ", " + words(corrected), "a survey that counts")));
        } else if (!access.current().may(Permission.SETTLE_SURVEYS)) {
            passage.remark(List.of(Remark.of(RemarkCode.CORRECTION_ASKED, PLACE, seen, "")));
        }
    }

    private static String words(SurveyRecord withdrawn) {
        Withdrawal withdrawal = Objects.requireNonNull(withdrawn.withdrawal());
        Long by = withdrawal.supersededBy();
        return by == null ? "voided" : "superseded by survey " + by;
    }

    private static boolean isSuccessor(@Nullable Withdrawal withdrawal, long surveyId) {
        return withdrawal != null && Objects.equals(withdrawal.supersededBy(), surveyId);
    }
}
