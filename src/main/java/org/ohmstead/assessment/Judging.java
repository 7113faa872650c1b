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
    private final LearnedValues learned;
    private final Limits limits;

    Judging(ForecastStates states, LearnedValues learned, AssessmentSettings settings) {
        this.states = states;
        this.learned = learned;
        this.limits = settings.limitsInForce();
    }

    /** The limits in force. */
    Limits limits() {
        return limits;
    }

    /** Before many are looked at one by one. */
    void refresh() {
        learned.refresh();
    }

    byte[] fingerprint(StringHistory history) {
        return Fingerprint.of(learned.in(history), limits);
    }

    /** Arithmetic alone, on all processors; in the order given. */
    List<Judged> judge(List<StringHistory> histories) {
        learned.refresh();
        Map<Long, Followed> before = states.of(
                histories.stream().map(history -> history.plan().stringId()).toList());
        return histories.parallelStream()
                .map(history -> judge(history, before.get(history.plan().stringId())))
                .toList();
    }

    /** @param before how far it was followed; null to start anew */
    Judged judge(StringHistory plain, @Nullable Followed before) {
        StringHistory history = learned.in(plain);
        Following following = new Following(history, ForecastParameters.standard(), before);
        StringJudgement byRules = new Judge(limits).judge(history);
        StringJudgement judgement = new Prospects(history.plan(), limits).join(byRules, following.forecast());
        return new Judged(judgement, fingerprint(plain), following.followed());
    }
}
