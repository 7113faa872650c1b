package org.ohmstead.assessment.model.forecast;

import java.util.Arrays;
import java.util.List;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.LinkPlan;
import org.ohmstead.assessment.model.LinkRemake;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.kernel.LinkKind;

/**
 * Follows one string from survey to survey. A state advanced survey by survey and one rebuilt from scratch are the same
 * bit by bit. Recorded work counts from the first survey on or after its day; work recorded late, or an amended survey,
 * asks for a rebuild.
 */
public final class Forecaster {
    private final StringPlan plan;
    private final List<JarSpell> spells;
    private final RecordedWork work;
    private final ForecastParameters parameters;

    public Forecaster(StringPlan plan, List<JarSpell> spells, List<LinkRemake> remakes, ForecastParameters parameters) {
        this.plan = plan;
        this.spells = List.copyOf(spells);
        this.work = new RecordedWork(plan, this.spells, List.copyOf(remakes));
        this.parameters = parameters.of(plan.jarType());
    }

    public static Forecaster of(StringHistory history, ForecastParameters parameters) {
        return new Forecaster(history.plan(), history.spells(), history.remakes(), parameters);
    }

    /** Before the first survey. */
    public ForecastState start() {
        GroupState jars = freshJars();
        GroupState links = fresh(parameters.links(), plan.positions() + 1);
        for (LinkPlan link : plan.links()) {
            if (link.kind() != LinkKind.STRAP) {
                links.units[link.ordinal()].takeOwnLevel();
            }
        }
        return new ForecastState(jars, links, new VoltWatch(plan.positions()), LastSurvey.NONE);
    }

    private GroupState freshJars() {
        GroupState jars = fresh(parameters.jars(), plan.positions());
        double life = plan.jarType().designLifeYears();
        jars.pace = life > 0 ? Math.min(parameters.referenceLifeYears() / life, 2) : 1;
        jars.common.restart(jars.pace, Double.NaN, 0);
        return jars;
    }

    private static GroupState fresh(UnitConstants constants, int count) {
        GroupState group = new GroupState(constants, count);
        Arrays.setAll(group.units, i -> new UnitState(constants));
        for (UnitState unit : group.units) {
            unit.restart(0);
        }
        group.common.restart(1, Double.NaN, 0);
        return group;
    }

    /** The state after one more survey; the given one stays as it is. */
    public ForecastState advance(ForecastState before, SurveyReadings survey) {
        return advance(before, survey, SharedError.UNKNOWN);
    }

    /** The same, knowing what other strings tell about the instrument's error that day. */
    public ForecastState advance(ForecastState before, SurveyReadings survey, SharedError instrument) {
        return step(before.copy(), survey, instrument).after();
    }

    /**
     * How far the jars' centre lies from what was expected, before the survey is taken in: what the estate compares
     * between strings to find an instrument's error.
     */
    public SurveyInnovation innovation(ForecastState before, SurveyReadings survey) {
        ForecastState state = predicted(before.copy(), survey);
        return jarSurvey(state, survey, 0).innovation();
    }

    /** @param innovation as of {@link #innovation}, which costs nothing more here */
    record Step(ForecastState after, SurveyInnovation innovation) {}

    /** Takes one more survey into a state that nobody else holds. */
    Step step(ForecastState own, SurveyReadings survey, SharedError instrument) {
        double clockBefore = own.jars.clockYears;
        ForecastState state = predicted(own, survey);
        double since = state.jars.clockYears - clockBefore;
        state.volts.take(LogReadings.voltsPerCell(plan, survey), state.jars.clockYears, since);
        GroupSurvey jars = jarSurvey(state, survey, since);
        SurveyInnovation innovation = jars.innovation();
        if (state.last.instrumentChanged() && !instrument.known()) {
            state.jars.common.changeInstrument(parameters.instrumentSpread());
        }
        jars.take(instrument);
        double[] links = LogReadings.ofLinks(plan, survey);
        new GroupSurvey(state.links, parameters, links, new boolean[links.length], since).take(SharedError.UNKNOWN);
        return new Step(state, innovation);
    }

    private GroupSurvey jarSurvey(ForecastState state, SurveyReadings survey, double since) {
        double[] logs = LogReadings.ofJars(plan, survey);
        if (state.jars.surveys > 0) {
            LogReadings.undoSurveySlip(logs, state.jars.common.expected());
        }
        return new GroupSurvey(state.jars, parameters, logs, state.volts.low(), since);
    }

    /** Brings a state that nobody else holds to the day of the survey. */
    private ForecastState predicted(ForecastState own, SurveyReadings survey) {
        LastSurvey last = own.last.then(survey);
        ForecastState state = last.kindChanged() ? withFreshJars(own) : own;
        Baselines baselines = new Baselines(plan, spells, survey.ohmicKind());
        if (state.jars.surveys == 0 && !last.kindChanged()) {
            takeBaselines(state.jars, baselines);
        }
        work.apply(state, survey.takenOn(), baselines);
        double years = RecordedWork.yearsInService(plan, survey.takenOn());
        state.jars.predict(years);
        state.links.predict(years);
        return state.after(last);
    }

    private ForecastState withFreshJars(ForecastState own) {
        GroupState fresh = freshJars();
        fresh.predict(own.jars.clockYears);
        return new ForecastState(fresh, own.links, own.volts, own.last);
    }

    private void takeBaselines(GroupState jars, Baselines baselines) {
        jars.common.restart(jars.pace, baselines.reference(), parameters.unknownLevelSpread());
        double[] logs = baselines.whenNew();
        new GroupSurvey(jars, parameters, logs, new boolean[logs.length], 0).take(SharedError.UNKNOWN);
    }

    /** Takes all surveys in, from the start. */
    public ForecastState follow(List<SurveyReadings> surveys) {
        Follower follower = new Follower(this, start());
        surveys.forEach(follower::take);
        return follower.state();
    }

    /** What is to be said as of the state's last survey. */
    public StringForecast forecast(ForecastState state) {
        return new Outlook(plan, parameters, state).forecast();
    }
}
