package org.ohmstead.assessment;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Judge;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.assessment.model.prospect.Prospects;
import org.springframework.stereotype.Component;

/** Judges strings by the rules and by the forecast, which goes on from where it left each string. */
@Component
class Judging {

    private final ForecastStates states;
    private final Limits limits;

    Judging(ForecastStates states, AssessmentSettings settings) {
        this.states = states;
        this.limits = settings.limitsInForce();
    }

    /** The limits in force. */
    Limits limits() {
        return limits;
    }

    byte[] fingerprint(StringHistory history) {
        return Fingerprint.of(history, limits);
    }

    /** Arithmetic alone, on all processors; in the order given. */
    List<Judged> judge(List<StringHistory> histories) {
        Map<Long, Followed> before = states.of(
                histories.stream().map(history -> history.plan().stringId()).toList());
        return histories.parallelStream()
                .map(history -> judge(history, before.get(history.plan().stringId())))
                .toList();
    }

    /** @param before how far it was followed; null to start anew */
    Judged judge(StringHistory history, @Nullable Followed before) {
        Following following = new Following(history, ForecastParameters.standard(), before);
        StringJudgement byRules = new Judge(limits).judge(history);
        StringJudgement judgement = new Prospects(history.plan(), limits).join(byRules, following.forecast());
        return new Judged(judgement, fingerprint(history), following.followed());
    }
}
