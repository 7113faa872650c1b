package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.StringPlan;

/** Turns a state into the forecast that people read. */
final class Outlook {
    private static final double DAYS_PER_YEAR = 365.25;
    private static final double EARLY = .1;
    private static final double MIDDLE = .5;
    private static final double LATE = .9;

    private final StringPlan plan;
    private final ForecastParameters parameters;
    private final ForecastState state;
    private final LocalDate asOf;

    Outlook(StringPlan plan, ForecastParameters parameters, ForecastState state) {
        this.plan = plan;
        this.parameters = parameters;
        this.state = state;
        LocalDate last = state.asOf();
        this.asOf = last == null ? plan.inServiceOn() : last;
    }

    StringForecast forecast() {
        VisitPlanner planner = new VisitPlanner(parameters, asOf, plan.positions());
        List<UnitForecast> jars = units(state.jars, true, planner);
        List<UnitForecast> links = units(state.links, false, planner);
        CommonState common = state.jars.common;
        return new StringForecast(
                asOf,
                parameters.version(),
                jars,
                links,
                Math.expm1(common.rise()),
                common.state.mean[CommonState.RATE],
                Math.expm1(state.jars.lastSurveyError),
                state.jars.lastSurveyErrorDeviation,
                Math.sqrt(state.jars.readingVariance),
                planner.next(),
                doubts());
    }

    private List<UnitForecast> units(GroupState group, boolean jars, VisitPlanner planner) {
        CommonPath path = CommonPath.of(group, parameters);
        List<UnitForecast> forecasts = new ArrayList<>(group.units.length);
        for (int i = 0; i < group.units.length; i++) {
            UnitState unit = group.units[i];
            double shorted = jars ? state.volts.shortProbability[i] : 0;
            CrossingCurve.Curves curves = CrossingCurve.of(unit, path, LATE);
            UnitForecast forecast = unit(group, i, shorted, curves);
            planner.consider(forecast, curves.failing(), !jars);
            forecasts.add(forecast);
        }
        return forecasts;
    }

    private UnitForecast unit(GroupState group, int i, double shorted, CrossingCurve.Curves curves) {
        UnitState unit = group.units[i];
        double[] crossing = curves.crossing();
        UnitRisk chance = UnitRisk.of(curves.failing(), shorted, unit, parameters);
        double share = group.share(unit, group.clockYears, parameters.shareExponent());
        return new UnitForecast(
                group == state.jars ? i + 1 : i,
                chance.probability(),
                chance.score(),
                chance.score() > parameters.flagAbove(),
                curves.failing()[0],
                day(CrossingCurve.reaches(crossing, EARLY)),
                day(CrossingCurve.reaches(crossing, MIDDLE)),
                day(CrossingCurve.reaches(crossing, LATE)),
                Math.expm1(unit.rise() + share * group.common.rise()),
                unit.rate() + share * group.common.state.mean[CommonState.RATE],
                unit.goingWeight,
                shorted,
                unit.pending,
                day(unit.suspectedRestartYears - group.clockYears),
                unit.stepped,
                unit.readings,
                doubts(unit));
    }

    private @Nullable LocalDate day(double yearsAhead) {
        return Double.isFinite(yearsAhead) ? asOf.plusDays(Math.round(yearsAhead * DAYS_PER_YEAR)) : null;
    }

    private static Set<DataDoubt> doubts(UnitState unit) {
        Set<DataDoubt> doubts = EnumSet.noneOf(DataDoubt.class);
        addIf(doubts, Double.isFinite(unit.pending), DataDoubt.PENDING_READING);
        addIf(doubts, Double.isFinite(unit.suspectedRestartYears), DataDoubt.RENEWED_WITHOUT_RECORD);
        addIf(doubts, unit.readings == 0, DataDoubt.NEVER_READ);
        addIf(doubts, unit.readings > 0 && !unit.inLastSurvey, DataDoubt.NOT_IN_LAST_SURVEY);
        return doubts;
    }

    private Set<DataDoubt> doubts() {
        Set<DataDoubt> doubts = EnumSet.noneOf(DataDoubt.class);
        boolean renewed =
                Double.isFinite(state.jars.suspectedRenewalYears) || Double.isFinite(state.links.suspectedRenewalYears);
        addIf(doubts, renewed, DataDoubt.STRING_RENEWED_WITHOUT_RECORD);
        addIf(doubts, state.last.instrumentChanged(), DataDoubt.INSTRUMENT_CHANGED);
        addIf(doubts, state.last.kindChanged(), DataDoubt.KIND_CHANGED);
        addIf(doubts, Double.isNaN(plan.jarType().ohmicPerKelvin()), DataDoubt.NO_TEMPERATURE_COEFFICIENT);
        return doubts;
    }

    private static void addIf(Set<DataDoubt> doubts, boolean applies, DataDoubt doubt) {
        if (applies) {
            doubts.add(doubt);
        }
    }
}
