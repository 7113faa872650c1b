package org.ohmstead.testbed;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.Judge;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.assessment.model.forecast.StringForecast;
import org.ohmstead.assessment.model.prospect.Prospects;
import org.ohmstead.kernel.Urgency;

/** Counts what is raised on healthy strings: those of which no jar has failed or fails within a year. */
final class Alarms {
    private final Judge judge = new Judge(Limits.standard());
    private int surveys;
    private int jars;
    private int acts;
    private int joinedActs;
    private final Map<String, Integer> why = new TreeMap<>();
    private int flags;

    /** @param forecasts one per survey */
    void hear(SimulatedString string, List<StringForecast> forecasts) {
        History history = new History(string, false);
        for (int s = 0; s < history.years.length; s++) {
            double now = history.years[s];
            boolean healthy = Arrays.stream(history.truths[s]).allMatch(truth -> truth.failsAt() > now + 1);
            if (healthy) {
                hear(asOf(string.history(), s), forecasts.get(s));
            }
        }
    }

    private void hear(StringHistory history, StringForecast forecast) {
        StringJudgement judgement = judge.judge(history);
        surveys++;
        jars += judgement.jars().size();
        acts += (int) judgement.jars().stream()
                .filter(jar -> jar.urgency() == Urgency.ACT)
                .count();
        StringJudgement joined = new Prospects(history.plan(), Limits.standard()).join(judgement, forecast);
        for (JarJudgement jar : joined.jars()) {
            if (jar.urgency() == Urgency.ACT) {
                joinedActs++;
                jar.reasons().stream()
                        .filter(reason -> reason.asks() == Urgency.ACT)
                        .forEach(reason -> why.merge(reason.rule().name(), 1, Integer::sum));
            }
        }
        flags += (int) forecast.jars().stream().filter(jar -> jar.flagged()).count();
    }

    private static StringHistory asOf(StringHistory history, int survey) {
        return new StringHistory(
                history.plan(),
                history.spells().stream()
                        .filter(spell -> !spell.during()
                                .from()
                                .isAfter(history.surveys().get(survey).takenOn()))
                        .toList(),
                history.remakes().stream()
                        .filter(remake -> !remake.remadeOn()
                                .isAfter(history.surveys().get(survey).takenOn()))
                        .toList(),
                history.surveys().subList(0, survey + 1));
    }

    /** Of the jars of healthy strings, the share that is asked to act on by rules and forecast together. */
    double shareOfActs() {
        return (double) joinedActs / jars;
    }

    int jars() {
        return jars;
    }

    void hearAll(Laws laws, long seed) {
        List<SimulatedString> estate = new EstateGenerator(laws, seed).estate();
        List<List<StringForecast>> forecasts = Contest.forecasts(estate);
        for (int k = 0; k < estate.size(); k++) {
            hear(estate.get(k), forecasts.get(k));
        }
    }

    String words() {
        return String.format(
                Locale.ROOT,
                "healthy strings: %d surveys, %d jars judged; the rules ask to act on %.3f %%, rules and forecast joined on"
                        + " %.3f %% %s, the forecast flags %.3f %%",
                surveys,
                jars,
                100.0 * acts / jars,
                100.0 * joinedActs / jars,
                why,
                100.0 * flags / jars);
    }

    /** Laws and seeds as for {@link Contest}. */
    public static void main(String[] arguments) {
        for (String estates : arguments) {
            String[] parts = estates.split(":");
            Alarms alarms = new Alarms();
            for (String seed : parts[1].split(",")) {
                alarms.hearAll(Contest.laws(parts[0]), Long.parseLong(seed));
            }
            System.out.println(estates + ": " + alarms.words());
        }
    }
}
