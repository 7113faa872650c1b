package org.ohmstead.testbed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.assessment.model.forecast.EstateReplay;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.assessment.model.forecast.StringForecast;

/**
 * Runs all methods over invented estates and prints as Markdown what each foresaw. Arguments: laws and seeds, such as
 * {@code ordinary:101,102,103 jumpy:201}; seeds 1 to 20, 101 to 103, 201, 202, 301 and 302 were seen while the
 * filter was made.
 */
final class Contest {
    private static final String[] REPORTED = {"ordinary:111,112,113", "jumpy:211,212", "drifting:311,312"};

    private Contest() {}

    public static void main(String[] arguments) {
        for (String estates : arguments.length > 0 ? arguments : REPORTED) {
            String[] parts = estates.split(":");
            report(
                    parts[0],
                    Arrays.stream(parts[1].split(","))
                            .mapToLong(Long::parseLong)
                            .toArray());
        }
    }

    private static void report(String laws, long[] seeds) {
        Map<Method, List<Score>> jars = new EnumMap<>(Method.class);
        Map<Method, List<Score>> links = new EnumMap<>(Method.class);
        for (long seed : seeds) {
            Trial trial = run(laws(laws), seed);
            for (Method method : Method.values()) {
                add(jars, method, Score.of(trial.verdicts(method, false)));
                add(links, method, Score.of(trial.verdicts(method, true)));
            }
        }
        print("jars", laws, seeds, jars);
        print("links", laws, seeds, links);
    }

    private static void add(Map<Method, List<Score>> scores, Method method, Score score) {
        scores.computeIfAbsent(method, key -> new ArrayList<>()).add(score);
    }

    private static void print(String kind, String laws, long[] seeds, Map<Method, List<Score>> scores) {
        Score all = Score.mean(scores.get(Method.FILTER));
        System.out.printf(
                "%n%s, laws \"%s\", seeds %s: %d failures in %d unit-surveys%n%n",
                kind, laws, Arrays.toString(seeds), all.failures(), all.rows());
        System.out.println(Score.TITLES);
        for (Method method : Method.values()) {
            System.out.println(Score.mean(scores.get(method)).row(method.words()));
        }
    }

    static Laws laws(String name) {
        return switch (name) {
            case "ordinary" -> Laws.ordinary();
            case "jumpy" -> Laws.jumpy();
            case "drifting" -> Laws.drifting();
            default ->
                throw new IllegalArgumentException(
                        "There are no laws called " + name + "; there are ordinary, jumpy and drifting");
        };
    }

    /** Per string, per survey. */
    static List<List<StringForecast>> forecasts(List<SimulatedString> estate) {
        List<List<StringForecast>> forecasts = new ArrayList<>();
        estate.forEach(string -> forecasts.add(new ArrayList<>()));
        new EstateReplay(estate.stream().map(SimulatedString::history).toList(), ForecastParameters.standard())
                .run((string, survey, forecast) -> forecasts.get(string).add(forecast));
        return forecasts;
    }

    static Trial run(Laws laws, long seed) {
        List<SimulatedString> estate = new EstateGenerator(laws, seed).estate();
        List<List<StringForecast>> forecasts = forecasts(estate);
        Trial trial = new Trial();
        for (int k = 0; k < estate.size(); k++) {
            trial.hear(k, estate.get(k), forecasts.get(k));
        }
        return trial;
    }
}
