package org.ohmstead.assessment;

import static org.ohmstead.access.Permission.SEE_ESTATE;
import static org.ohmstead.access.Permission.SETTLE_SURVEYS;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.assessment.model.Doubt;
import org.ohmstead.assessment.model.Limit;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.assessment.model.estate.InstrumentFinder;
import org.ohmstead.kernel.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The instruments of the estate and what each seems to read off. An offset is offered as a doubt with its evidence; no
 * reading and no judgement is ever changed for it.
 */
@Service
public class Instruments {

    /** So many surveys are shown of one instrument. */
    public static final int MOST_SURVEYS = 400;

    private final InstrumentTable table;
    private final Judging judging;
    private final Access access;
    private final AuditTrail audit;
    private final Clock clock;

    Instruments(InstrumentTable table, Judging judging, Access access, AuditTrail audit, Clock clock) {
        this.table = table;
        this.judging = judging;
        this.access = access;
        this.audit = audit;
        this.clock = clock;
    }

    /** Those used in the areas in reach, as the last look found them. */
    @Transactional(readOnly = true)
    public List<InstrumentView> all() {
        access.require(SEE_ESTATE);
        return table.all(access.reach(), threshold());
    }

    /** @throws NotFound when it was not used in the areas in reach, or the estate was not looked through since */
    @Transactional(readOnly = true)
    public InstrumentView instrument(String serial) {
        access.require(SEE_ESTATE);
        return table.find(serial, access.reach(), threshold())
                .orElseThrow(() -> new NotFound("Instrument " + serial
                        + " is not on the list: it took no survey in your reach, or the estate was not looked through since"
                        + " its first. The next walk over the estate looks at it."));
    }

    /** Its latest surveys in reach, newest first, at most {@link #MOST_SURVEYS}. */
    @Transactional(readOnly = true)
    public List<InstrumentSurvey> surveys(String serial) {
        access.require(SEE_ESTATE);
        return table.surveys(serial, access.reach(), MOST_SURVEYS);
    }

    /** An instrument that reads off by less is not named: share of the value. */
    public double threshold() {
        return judging.limits().of(Limit.INSTRUMENT_OFF);
    }

    /** Looks through the whole estate now, as every walk does. */
    @Transactional
    public List<InstrumentView> lookAgain() {
        access.require(SETTLE_SURVEYS);
        look();
        audit.record("instruments looked at again", "estate", "instruments", null, Map.of());
        return table.all(access.reach(), threshold());
    }

    @Transactional
    void look() {
        InstrumentFinder finder = new InstrumentFinder(table.errors());
        Instant now = clock.instant();
        table.clear();
        for (InstrumentTable.Use use : table.uses()) {
            table.store(use, finder.of(use.serial()).orElse(null), now);
        }
    }

    /** The judgement with a doubt when the instrument of its survey seems to read off. */
    AssessmentView doubted(AssessmentView view) {
        StringJudgement judgement = view.judgement();
        Long surveyId = judgement.surveyId();
        return surveyId == null
                ? view
                : table.ofSurvey(judgement.stringId(), surveyId, threshold())
                        .filter(InstrumentView::off)
                        .map(instrument -> view.with(judgement.with(joined(judgement, instrument))))
                        .orElse(view);
    }

    private static List<Doubt> joined(StringJudgement judgement, InstrumentView instrument) {
        List<Doubt> doubts = new ArrayList<>(judgement.doubts());
        InstrumentView.Finding finding = instrument.finding();
        if (finding != null) {
            doubts.add(new Doubt(
                    Doubt.Kind.INSTRUMENT_OFF,
                    "The instrument " + instrument.serial() + " seems to read " + finding.words() + " since "
                            + finding.since() + ", by " + finding.surveys()
                            + " surveys of the estate. Nothing is corrected for that: have it checked."));
        }
        return doubts;
    }
}
