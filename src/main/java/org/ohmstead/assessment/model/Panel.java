package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.statistics.Quantiles;
import org.ohmstead.statistics.Spread;

/**
 * A string's surveys made comparable: per survey and position the <em>burden</em>, a number that rises as the jar ages.
 * For impedance and resistance it is the value itself, for conductance its reciprocal (a trend, never an ohmic value to
 * be shown). Readings of jars that have since been replaced are left out.
 */
final class Panel {

    private static final double DAYS_PER_YEAR = 365.25;

    private final StringHistory history;
    private final Limits limits;
    private final Seats seats;
    private final double[][] burdens;
    private final long[] days;
    private final int lastRoundOfJars;
    private final Map<Long, Lot> lots = new HashMap<>();
    private final Map<Long, Double> shifts = new HashMap<>();
    private final Map<Integer, Double> medianVolts = new HashMap<>();
    private final Map<Integer, Double> medianCelsius = new HashMap<>();

    Panel(StringHistory history, Limits limits) {
        this.history = history;
        this.limits = limits;
        this.seats = Seats.of(history, limits);
        this.burdens = history.surveys().stream().map(this::burdens).toArray(double[][]::new);
        this.days = history.surveys().stream()
                .mapToLong(survey -> survey.takenOn().toEpochDay())
                .toArray();
        this.lastRoundOfJars = findLastRoundOfJars();
    }

    StringHistory history() {
        return history;
    }

    Seats seats() {
        return seats;
    }

    SurveyReadings survey(int index) {
        return history.surveys().get(index);
    }

    /** Index of the last survey, -1 without any. */
    int last() {
        return burdens.length - 1;
    }

    /** Index of the last survey in which half of the jars or more were read, -1 without any. */
    int lastRoundOfJars() {
        return lastRoundOfJars;
    }

    private int findLastRoundOfJars() {
        int index = last();
        while (index >= 0
                && 2 * readCount(survey(index).ohmic()) < history.plan().positions()) {
            index--;
        }
        return index;
    }

    private static int readCount(double[] values) {
        int count = 0;
        for (double value : values) {
            count += value > 0 ? 1 : 0;
        }
        return count;
    }

    /** The readings of one kind of the jar that sits there now, taken on float or being its very last, oldest first. */
    List<Reading> readings(int position) {
        int latest = last();
        while (latest >= 0 && Double.isNaN(burdens[latest][position - 1])) {
            latest--;
        }
        List<Reading> found = new ArrayList<>();
        for (int s = 0; s <= latest; s++) {
            boolean comparable = survey(s).ohmicKind() == survey(latest).ohmicKind();
            if (comparable
                    && !Double.isNaN(burdens[s][position - 1])
                    && (survey(s).onFloat() || s == latest)) {
                found.add(reading(s, position));
            }
        }
        return found;
    }

    private Reading reading(int index, int position) {
        SurveyReadings survey = survey(index);
        double value = survey.ohmic()[position - 1];
        return new Reading(index, survey.takenOn(), survey.ohmicKind(), value, burdens[index][position - 1]);
    }

    /** Median and spread of ln(burden) over the jars of one delivery in one survey. */
    Lot lot(int survey, int position) {
        int lot = seats.lotOf(position);
        return lots.computeIfAbsent((long) survey << 32 | lot, key -> lotIn(survey, lot));
    }

    private Lot lotIn(int survey, int lot) {
        double[] logs = new double[burdens[survey].length];
        for (int i = 0; i < logs.length; i++) {
            logs[i] = seats.isOfLot(i + 1, lot) ? Math.log(burdens[survey][i]) : Double.NaN;
        }
        return Numbers.count(logs) < limits.of(Limit.LOT_SIZE)
                ? Lot.TOO_FEW
                : new Lot(Quantiles.median(logs), Spread.mad(logs));
    }

    /** The median over all jars of ln(burden now / burden then). */
    double shift(int then, int now) {
        return shifts.computeIfAbsent((long) then << 32 | now, key -> {
            double[] ratios = new double[burdens[now].length];
            for (int i = 0; i < ratios.length; i++) {
                ratios[i] = Math.log(burdens[now][i] / burdens[then][i]);
            }
            return Quantiles.median(ratios);
        });
    }

    double medianVolts(int survey) {
        return medianVolts.computeIfAbsent(
                survey, s -> VoltsEvidence.median(survey(s).volts()));
    }

    /** Of the jars whose temperature was read; NaN without any. */
    double medianCelsius(int survey) {
        return medianCelsius.computeIfAbsent(
                survey, s -> Quantiles.median(survey(s).celsius()));
    }

    /** The median jar temperature, else the room's. */
    static double celsius(SurveyReadings survey) {
        return Numbers.either(Quantiles.median(survey.celsius()), survey.ambientCelsius());
    }

    private double[] burdens(SurveyReadings survey) {
        double[] burdens = new double[history.plan().positions()];
        double celsius = isCorrected() ? celsius(survey) : Double.NaN;
        for (int i = 0; i < burdens.length; i++) {
            boolean here = seats.at(i + 1).during().contains(survey.takenOn());
            double own = Numbers.at(survey.celsius(), i);
            burdens[i] = here ? burden(survey, i + 1, Numbers.either(own, celsius)) : Double.NaN;
        }
        return burdens;
    }

    /** @param celsius a jar's own temperature, else the survey's median jar, else the room; NaN without any */
    private double burden(SurveyReadings survey, int position, double celsius) {
        double value = Numbers.positive(Numbers.at(survey.ohmic(), position - 1));
        double perKelvin = history.plan().jarType().ohmicPerKelvin();
        boolean corrected = isCorrected() && !Double.isNaN(celsius);
        double at25 = corrected ? value / (1 + perKelvin * (celsius - 25)) : value;
        return burden(survey.ohmicKind(), at25);
    }

    private boolean isCorrected() {
        return !Double.isNaN(history.plan().jarType().ohmicPerKelvin());
    }

    /** The value itself, or the reciprocal of a conductance. */
    static double burden(OhmicKind kind, double value) {
        return kind.risesWithAge() ? value : 1 / value;
    }

    static double years(LocalDate from, LocalDate to) {
        return years(from.toEpochDay(), to.toEpochDay());
    }

    /** The site's day of a survey, counted from 1970. */
    long day(int survey) {
        return days[survey];
    }

    /** Between two surveys. */
    double years(int from, int to) {
        return years(days[from], days[to]);
    }

    private static double years(long from, long to) {
        return (to - from) / DAYS_PER_YEAR;
    }

    /**
     * @param logMedian NaN when too few jars were read
     * @param logSpread scaled median absolute deviation
     */
    record Lot(double logMedian, double logSpread) {

        static final Lot TOO_FEW = new Lot(Double.NaN, Double.NaN);
    }
}
