package org.ohmstead.assessment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.assessment.model.forecast.Follower;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.assessment.model.forecast.ForecastState;
import org.ohmstead.assessment.model.forecast.Forecaster;
import org.ohmstead.assessment.model.forecast.StringForecast;
import org.ohmstead.assessment.model.forecast.SurveyInnovation;

/**
 * Follows a string to its last survey: from where it was left when the surveys seen then still stand as they were, from
 * the start otherwise.
 */
final class Following {

    private final StringHistory history;
    private final Fingerprint fingerprint;
    private final ForecastParameters parameters;
    private final Forecaster forecaster;
    private final List<Long> surveyIds = new ArrayList<>();
    private final List<@Nullable Double> innovations = new ArrayList<>();
    private final List<@Nullable Double> variances = new ArrayList<>();
    private Follower follower;
    private int seen;

    Following(Known known, ForecastParameters parameters, @Nullable Followed before) {
        this.history = known.history();
        this.fingerprint = known.seen();
        this.parameters = parameters.of(history.plan().jarType());
        this.forecaster = Forecaster.of(history, parameters);
        this.follower = new Follower(forecaster, forecaster.start());
        if (before != null && stillHolds(before)) {
            goOnFrom(before);
        }
        history.surveys().subList(seen, history.surveys().size()).forEach(this::take);
    }

    private boolean stillHolds(Followed before) {
        return before.surveys() <= history.surveys().size()
                && Arrays.equals(before.fingerprint(), fingerprint.ofFirst(before.surveys()));
    }

    private void goOnFrom(Followed before) {
        ForecastState kept = ForecastState.fromBytes(before.state(), parameters);
        if (kept != null) {
            follower = new Follower(forecaster, kept);
            seen = before.surveys();
            surveyIds.addAll(List.of(before.surveyIds()));
            innovations.addAll(Arrays.asList(before.innovations()));
            variances.addAll(Arrays.asList(before.variances()));
        }
    }

    private void take(SurveyReadings survey) {
        SurveyInnovation innovation = follower.take(survey);
        if (survey.instrument() != null) {
            surveyIds.add(survey.surveyId());
            innovations.add(orNull(innovation.value()));
            variances.add(orNull(innovation.variance()));
        }
        seen++;
    }

    private static @Nullable Double orNull(double value) {
        return Double.isFinite(value) ? value : null;
    }

    StringForecast forecast() {
        return forecaster.forecast(follower.state());
    }

    ForecastState state() {
        return follower.state();
    }

    Followed followed() {
        return new Followed(
                seen,
                fingerprint.ofFirst(seen),
                follower.state().toBytes(parameters),
                surveyIds.toArray(Long[]::new),
                innovations.toArray(Double[]::new),
                variances.toArray(Double[]::new));
    }
}
