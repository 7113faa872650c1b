package org.ohmstead.assessment;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** "What would we have said then?", survey by survey, with today's rules and nothing later than the day. */
@Service
public class StringReplay {

    /** A judgement looks at the whole past: the work grows with the square of the surveys. */
    static final int MOST = 60;

    private final FleetRegister register;
    private final SurveyLedger ledger;
    private final Judging judging;
    private final Access access;

    StringReplay(FleetRegister register, SurveyLedger ledger, Judging judging, Access access) {
        this.register = register;
        this.ledger = ledger;
        this.judging = judging;
        this.access = access;
    }

    /** The latest surveys, newest first. */
    @Transactional(readOnly = true)
    public List<ReplayedDay> of(long stringId) {
        access.require(SEE_ESTATE);
        StringBlueprint blueprint = register.blueprint(stringId);
        List<SurveyRecord> surveys = ledger.surveysOf(stringId);
        List<ReplayedDay> days = new ArrayList<>();
        @Nullable Followed followed = null;
        for (int n = Math.max(1, surveys.size() - MOST + 1); n <= surveys.size(); n++) {
            SurveyRecord last = surveys.get(n - 1);
            Judged judged = judging.judge(
                    Histories.of(blueprint, surveys.subList(0, n), last.facts().takenOn()), followed);
            followed = judged.followed();
            days.add(ReplayedDay.of(judged.judgement(), last.id()));
        }
        Collections.reverse(days);
        return days;
    }
}
