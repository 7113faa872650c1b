package org.ohmstead.testbed;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.LinkRemake;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.SurveyReadings;

/** One string's jars, or its links, as tables of numbers: readings per survey and unit, and the truth beside them. */
final class History {
    final double[] years;
    final double[][] logs;
    final Truth[][] truths;
    private final double[][] fittedOn;

    History(SimulatedString string, boolean link) {
        StringHistory history = string.history();
        List<SurveyReadings> surveys = history.surveys();
        int units = history.plan().positions() + (link ? 1 : 0);
        this.years = surveys.stream()
                .mapToDouble(survey -> years(history, survey.takenOn()))
                .toArray();
        this.logs = surveys.stream()
                .map(survey -> link ? linkLogs(survey) : jarLogs(survey))
                .toArray(double[][]::new);
        this.truths = new Truth[surveys.size()][units];
        string.truths().stream().filter(truth -> truth.link() == link).forEach(this::place);
        this.fittedOn = link ? remakes(history, units) : spells(history, units);
    }

    private void place(Truth truth) {
        for (int s = 0; s < years.length; s++) {
            if (truth.coversAt(years[s])) {
                truths[s][truth.index()] = truth;
            }
        }
    }

    private static double[][] spells(StringHistory history, int units) {
        double[][] fitted = new double[units][0];
        for (JarSpell spell : history.spells()) {
            add(fitted, spell.position() - 1, years(history, spell.during().from()));
        }
        return fitted;
    }

    private static double[][] remakes(StringHistory history, int units) {
        double[][] fitted = new double[units][0];
        for (LinkRemake remake : history.remakes()) {
            add(fitted, remake.ordinal(), years(history, remake.remadeOn()));
        }
        return fitted;
    }

    private static void add(double[][] fitted, int index, double when) {
        fitted[index] = Arrays.copyOf(fitted[index], fitted[index].length + 1);
        fitted[index][fitted[index].length - 1] = when;
    }

    /** What the simple rules see as of a survey. */
    Rivals rivals(int now) {
        int[] since = new int[fittedOn.length];
        for (int i = 0; i < since.length; i++) {
            double fitted = Arrays.stream(fittedOn[i])
                    .filter(when -> when <= years[now])
                    .max()
                    .orElse(0);
            while (since[i] < now && years[since[i]] < fitted) {
                since[i]++;
            }
        }
        return new Rivals(Arrays.copyOf(years, now + 1), Arrays.copyOf(logs, now + 1), since);
    }

    private static double years(StringHistory history, LocalDate day) {
        return (day.toEpochDay() - history.plan().inServiceOn().toEpochDay()) / 365.25;
    }

    private static double[] jarLogs(SurveyReadings survey) {
        return Arrays.stream(survey.ohmic()).map(Math::log).toArray();
    }

    private static double[] linkLogs(SurveyReadings survey) {
        return Arrays.stream(survey.linkMicroohms())
                .mapToDouble(straps -> -Math.log(
                        Arrays.stream(straps).map(r -> 1 / r).average().orElse(Double.NaN)))
                .toArray();
    }
}
