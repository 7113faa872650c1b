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

    /** All that a judgement will look at. */
    Known known(StringHistory plain) {
        StringHistory history = learned.in(plain);
        Fingerprint seen = Fingerprint.over(history);
        return new Known(history, seen, seen.judgedBy(limits));
    }

    /** One string by what is known now. */
    Judged judgeAnew(StringHistory plain) {
        learned.refresh();
        return judge(List.of(known(plain))).get(0);
    }

    /** Arithmetic alone, on all processors; in the order given. */
    List<Judged> judge(List<Known> strings) {
        Map<Long, Followed> before =
                states.of(strings.stream().map(Known::stringId).toList());
        return strings.parallelStream()
                .map(known -> judge(known, before.get(known.stringId())))
                .toList();
    }

    /** @param before how far it was followed; null to start anew */
    Judged judge(StringHistory plain, @Nullable Followed before) {
        return judge(known(plain), before);
    }

    private Judged judge(Known known, @Nullable Followed before) {
        StringHistory history = known.history();
        Following following = new Following(known, ForecastParameters.standard(), before);
        StringJudgement byRules = new Judge(limits).judge(history);
        StringJudgement judgement = new Prospects(history.plan(), limits).join(byRules, following.forecast());
        return new Judged(judgement, known.fingerprint(), following.followed());
    }
}
