package org.ohmstead.assessment;

import java.util.LinkedHashSet;
import java.util.Set;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.StringChanged;
import org.ohmstead.ledger.HistoryLoaded;
import org.ohmstead.ledger.SurveyAccepted;
import org.ohmstead.ledger.SurveyWithdrawn;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Judges a string when something of it changes, in the same transaction. A survey is answered with its assessment, so it
 * is judged at once; changes of the register often come many to a transaction, so each string is judged once, before the
 * commit. A history loaded in bulk is judged by the next walk, which is asked for.
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
        changedInThisTransaction().add(change.stringId());
    }

    @SuppressWarnings("unchecked")
    private Set<Long> changedInThisTransaction() {
        Set<Long> changed = (Set<Long>) TransactionSynchronizationManager.getResource(this);
        if (changed == null) {
            changed = new LinkedHashSet<>();
            TransactionSynchronizationManager.bindResource(this, changed);
            TransactionSynchronizationManager.registerSynchronization(new JudgeBeforeCommit(changed));
        }
        return changed;
    }

    private void judge(long stringId) {
        access.asSystem(Assessments.ACTOR, () -> assessments.judge(stringId));
    }

    private final class JudgeBeforeCommit implements TransactionSynchronization {

        private final Set<Long> changed;

        JudgeBeforeCommit(Set<Long> changed) {
            this.changed = changed;
        }

        @Override
        public void beforeCommit(boolean readOnly) {
            changed.forEach(OnArrival.this::judge);
        }

        @Override
        public void afterCompletion(int status) {
            TransactionSynchronizationManager.unbindResourceIfPossible(OnArrival.this);
        }
    }
}
