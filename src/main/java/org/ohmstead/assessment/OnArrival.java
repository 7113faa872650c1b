package org.ohmstead.assessment;

import org.ohmstead.access.Access;
import org.ohmstead.fleet.StringChanged;
import org.ohmstead.ledger.HistoryLoaded;
import org.ohmstead.ledger.SurveyAccepted;
import org.ohmstead.ledger.SurveyWithdrawn;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Judges a string when something of it changes, in the same transaction: a survey is answered with its assessment, and the
 * register announces a string once, just before it commits. A history loaded in bulk is judged by the next walk, which is
 * asked for.
 */
@Component
class OnArrival {

    private final Assessments assessments;
    private final EstateRun estateRun;
    private final Access access;

    OnArrival(Assessments assessments, EstateRun estateRun, Access access) {
        this.assessments = assessments;
        this.estateRun = estateRun;
        this.access = access;
    }

    @EventListener
    void on(SurveyAccepted survey) {
        judge(survey.stringId());
    }

    @EventListener
    void on(SurveyWithdrawn survey) {
        judge(survey.stringId());
    }

    @EventListener
    void on(HistoryLoaded history) {
        estateRun.request(access.current().username());
    }

    @EventListener
    void on(StringChanged change) {
        judge(change.stringId());
    }

    private void judge(long stringId) {
        access.asSystem(Assessments.ACTOR, () -> assessments.judge(stringId));
    }
}
