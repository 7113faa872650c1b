package org.ohmstead.testbed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.forecast.StringForecast;
import org.ohmstead.assessment.model.forecast.UnitForecast;

/** Lets all methods speak as of every survey, and writes down what is true beside it. */
final class Trial {
    private final Map<Method, List<Verdict>> jars = new EnumMap<>(Method.class);
    private final Map<Method, List<Verdict>> links = new EnumMap<>(Method.class);

    Trial() {
        for (Method method : Method.values()) {
            jars.put(method, new ArrayList<>());
            links.put(method, new ArrayList<>());
        }
    }

    List<Verdict> verdicts(Method method, boolean link) {
        return (link ? links : jars).get(method);
    }

    /** @param forecasts one per survey */
    void hear(int number, SimulatedString string, List<StringForecast> forecasts) {
        for (boolean link : new boolean[] {false, true}) {
            History history = new History(string, link);
            for (int s = 0; s < history.years.length; s++) {
                hearRivals(number, history, s, link);
                hearFilter(number, history, s, link, forecasts.get(s));
            }
        }
    }

    private void hearRivals(int number, History history, int s, boolean link) {
        Rivals rivals = history.rivals(s);
        hearAll(Method.OWN_BASELINE, number, history, s, link, rivals.overOwnBaseline());
        hearAll(Method.STRING_MEDIAN, number, history, s, link, rivals.overStringMedian());
        hearAll(Method.ROBUST_Z, number, history, s, link, rivals.robustZ());
        hearAll(Method.STRAIGHT_LINE, number, history, s, link, rivals.straightLine());
        hearAll(Method.MEDIAN_POLISH, number, history, s, link, rivals.medianPolish());
        double[] oracle = new double[history.truths[s].length];
        java.util.Arrays.setAll(oracle, i -> history.truths[s][i].oracle(history.years[s]));
        hearAll(Method.ORACLE, number, history, s, link, oracle);
    }

    private void hearAll(Method method, int number, History history, int s, boolean link, double[] scores) {
        for (int i = 0; i < scores.length; i++) {
            verdicts(method, link).add(Verdict.of(number, history.truths[s][i], history.years[s], scores[i]));
        }
    }

    private void hearFilter(int number, History history, int s, boolean link, StringForecast forecast) {
        List<UnitForecast> units = link ? forecast.links() : forecast.jars();
        for (int i = 0; i < units.size(); i++) {
            UnitForecast unit = units.get(i);
            verdicts(Method.FILTER, link)
                    .add(Verdict.of(number, history.truths[s][i], history.years[s], unit.probability())
                            .with(
                                    unit.probability(),
                                    ahead(forecast.asOf(), unit.early()),
                                    ahead(forecast.asOf(), unit.median()),
                                    ahead(forecast.asOf(), unit.late())));
        }
    }

    private static double ahead(LocalDate asOf, @Nullable LocalDate day) {
        return day == null ? Double.POSITIVE_INFINITY : (day.toEpochDay() - asOf.toEpochDay()) / 365.25;
    }
}
