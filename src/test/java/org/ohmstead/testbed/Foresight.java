package org.ohmstead.testbed;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.ohmstead.assessment.model.estate.ForecastLine;
import org.ohmstead.assessment.model.estate.JarChances;
import org.ohmstead.assessment.model.estate.ReplacementTally;
import org.ohmstead.assessment.model.forecast.StringForecast;
import org.ohmstead.assessment.model.forecast.UnitForecast;

/** Counts how many jars the forecast of replacements expects in invented estates, and how many fail. */
final class Foresight {

    private static final LocalDate SAME_DAY = LocalDate.of(2030, 1, 1);
    private static final int QUARTERS = 12;
    private static final int LEAST_SURVEYS = 4;

    private final ReplacementTally tally = new ReplacementTally(SAME_DAY, QUARTERS);
    private final TreeMap<Integer, Integer> failed = new TreeMap<>();

    /** As of the survey in the middle of the string's life, moved to one and the same day for all strings. */
    void hear(SimulatedString string, List<StringForecast> forecasts) {
        int middle = forecasts.size() / 2;
        if (middle < LEAST_SURVEYS) {
            return;
        }
        History history = new History(string, false);
        double now = history.years[middle];
        StringForecast said = forecasts.get(middle);
        for (int i = 0; i < said.jars().size(); i++) {
            Truth truth = history.truths[middle][i];
            if (truth != null) {
                hear(said.asOf(), said.jars().get(i), truth, now);
            }
        }
    }

    private void hear(LocalDate asOf, UnitForecast jar, Truth truth, double now) {
        JarChances chances = new JarChances(
                SAME_DAY,
                jar.beyondLimit(),
                jar.probability(),
                moved(asOf, jar.early()),
                moved(asOf, jar.median()),
                moved(asOf, jar.late()));
        tally.add("A", "T", SAME_DAY.minusDays(Math.round((now - truth.from()) * 365.25)), chances, null);
        double ahead = truth.failsAt() - now;
        int quarter = ahead <= 0 ? 0 : 1 + (int) (ahead * 4);
        failed.merge(quarter, 1, Integer::sum);
    }

    private static LocalDate moved(LocalDate asOf, LocalDate day) {
        return day == null ? null : SAME_DAY.plusDays(day.toEpochDay() - asOf.toEpochDay());
    }

    String words() {
        ForecastLine line = tally.forecast().total();
        StringBuilder words = new StringBuilder(String.format(
                Locale.ROOT,
                "%d jars; past already %.1f (%d to %d), true %d;",
                line.jars(),
                line.already().expected(),
                line.already().low(),
                line.already().high(),
                failed.getOrDefault(0, 0)));
        for (int year = 0; year < QUARTERS / 4; year++) {
            double expected = 0;
            int fell = 0;
            for (int q = 4 * year; q < 4 * year + 4; q++) {
                expected += line.byQuarter().get(q).expected();
                fell += failed.getOrDefault(q + 1, 0);
            }
            words.append(String.format(Locale.ROOT, " year %d: expected %.1f, true %d;", year + 1, expected, fell));
        }
        return words.append(String.format(
                        Locale.ROOT,
                        " in all %.1f (%d to %d)",
                        line.inAll().expected(),
                        line.inAll().low(),
                        line.inAll().high()))
                .toString();
    }

    /** Laws and seeds as for {@link Contest}. */
    public static void main(String[] arguments) {
        for (String estates : arguments) {
            String[] parts = estates.split(":");
            for (String seed : parts[1].split(",")) {
                Foresight foresight = new Foresight();
                List<SimulatedString> estate =
                        new EstateGenerator(Contest.laws(parts[0]), Long.parseLong(seed)).estate();
                List<List<StringForecast>> forecasts = Contest.forecasts(estate);
                for (int k = 0; k < estate.size(); k++) {
                    foresight.hear(estate.get(k), forecasts.get(k));
                }
                System.out.println(parts[0] + " " + seed + ": " + foresight.words());
            }
        }
    }
}
