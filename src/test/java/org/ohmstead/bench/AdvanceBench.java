package org.ohmstead.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.JarTypeFacts;
import org.ohmstead.assessment.model.Judge;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.LinkPlan;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.assessment.model.forecast.ForecastState;
import org.ohmstead.assessment.model.forecast.Forecaster;
import org.ohmstead.assessment.model.forecast.StringForecast;
import org.ohmstead.assessment.model.prospect.Prospects;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.DateRange;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;
import org.ohmstead.ledger.NewSurvey;

/**
 * What one more survey of one string costs in computing alone, nothing read or stored: the forecast taken one survey further
 * from its stored form, said, and put back into that form; then the same with the rules over the whole history joined to it.
 * Measured as the thread's own
 * processor time, so that waiting for a processor does not count.
 */
final class AdvanceBench {

    private static final int WARM_UPS = 2_000;
    private static final int RUNS = 500;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final ForecastParameters parameters = ForecastParameters.standard();
    private final Limits limits = Limits.standard();
    private final StringHistory history;
    private final SurveyReadings last;
    private final byte[] before;

    /** @param surveys of the history, the last of which is taken in */
    AdvanceBench(StringView string, int surveys) {
        this.history = history(string, surveys);
        List<SurveyReadings> earlier = history.surveys().subList(0, surveys - 1);
        this.last = history.surveys().get(surveys - 1);
        this.before = Forecaster.of(history, parameters)
                .follow(earlier)
                .toBytes(parameters.of(history.plan().jarType()));
    }

    void run(Results results) {
        results.alone("one string advanced by one more survey, computing alone", seconds(this::advance), "< 1 ms");
        results.alone("the same with the rules over its history", seconds(this::judge), "");
    }

    private double seconds(Runnable work) {
        for (int i = 0; i < WARM_UPS; i++) {
            work.run();
        }
        long[] nanoseconds = new long[RUNS];
        for (int i = 0; i < RUNS; i++) {
            long start = threads.getCurrentThreadCpuTime();
            work.run();
            nanoseconds[i] = threads.getCurrentThreadCpuTime() - start;
        }
        Arrays.sort(nanoseconds);
        return nanoseconds[RUNS / 2] / 1e9;
    }

    private StringForecast advance() {
        ForecastParameters ofType = parameters.of(history.plan().jarType());
        Forecaster forecaster = Forecaster.of(history, parameters);
        ForecastState kept = Objects.requireNonNull(ForecastState.fromBytes(before, ofType));
        ForecastState after = forecaster.advance(kept, last);
        StringForecast said = forecaster.forecast(after);
        if (after.toBytes(ofType).length != before.length || !last.takenOn().equals(said.asOf())) {
            throw new IllegalStateException("The survey was not taken in");
        }
        return said;
    }

    private void judge() {
        StringJudgement byRules = new Judge(limits).judge(history);
        StringJudgement judgement = new Prospects(history.plan(), limits).join(byRules, advance());
        if (judgement.surveyId() == null) {
            throw new IllegalStateException("The survey was not judged");
        }
    }

    private static StringHistory history(StringView string, int surveys) {
        int jars = string.positions();
        List<JarSpell> spells = IntStream.rangeClosed(1, jars)
                .mapToObj(position ->
                        new JarSpell(position, null, DateRange.startingOn(BenchEstate.IN_SERVICE), Double.NaN))
                .toList();
        List<SurveyReadings> taken = BenchSurveys.history(string, surveys)
                .map(AdvanceBench::readings)
                .toList();
        return new StringHistory(plan(string), spells, List.of(), taken);
    }

    private static StringPlan plan(StringView string) {
        JarTypeFacts type = new JarTypeFacts(
                "BENCH-500",
                Technology.VENTED_LEAD_ACID,
                1,
                2,
                500,
                2.23,
                0.352,
                OhmicKind.IMPEDANCE,
                Double.NaN,
                20,
                20);
        List<LinkPlan> links = IntStream.rangeClosed(0, string.positions())
                .mapToObj(ordinal -> new LinkPlan(ordinal, LinkKind.STRAP, 1, null))
                .toList();
        return new StringPlan(string.id(), type, string.positions(), links, 2.23, 90, 240, BenchEstate.IN_SERVICE);
    }

    private static SurveyReadings readings(NewSurvey survey) {
        var facts = survey.facts();
        var read = survey.readings();
        return new SurveyReadings(
                facts.takenAt().getEpochSecond(),
                facts.takenAt(),
                facts.takenOn(),
                facts.ohmicKind(),
                facts.instrument(),
                facts.ambientCelsius(),
                facts.stringVolts(),
                facts.rippleAmps(),
                facts.onFloat(),
                read.ohmic(),
                read.volts(),
                read.celsius(),
                read.linkMicroohms());
    }
}
