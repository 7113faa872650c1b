package org.ohmstead.assessment.model.estate;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The mean error of some surveys, logarithmic. Surveys of one day share an error of that day; what lies far off is taken
 * for a string that changed, and weighs less.
 *
 * @param mean 0.03 is 3 % high
 * @param variance how uncertain that is
 */
record SharedShift(double mean, double variance) {

    /** Error that all surveys of an instrument share on a day. */
    private static final double OF_DAY = .015 * .015;

    /** Error of a survey besides that. */
    private static final double OF_SURVEY = .012 * .012;

    /** How far all strings of an estate may be expected wrongly alike. */
    private static final double OF_ESTATE = .01 * .01;

    /** Spread of the offsets between instruments. */
    private static final double OF_INSTRUMENT = .02 * .02;

    /** How far that changes in some years. */
    private static final double OF_TIME = .004 * .004;

    /** So many days' worth of scatter as expected is taken for known before any is seen. */
    private static final double EXPECTED_DAYS = 4;

    private static final double FAR = 2.5;

    private record Day(double mean, double variance) {}

    static SharedShift of(List<SurveyError> surveys) {
        double middle = middle(surveys);
        Map<LocalDate, List<SurveyError>> byDay =
                surveys.stream().collect(Collectors.groupingBy(SurveyError::on, TreeMap::new, Collectors.toList()));
        List<Day> days = byDay.values().stream().map(day -> day(day, middle)).toList();
        double precision = days.stream().mapToDouble(day -> 1 / day.variance()).sum();
        double mean =
                days.stream().mapToDouble(day -> day.mean() / day.variance()).sum() / precision;
        double scatter = days.stream()
                .mapToDouble(day -> (day.mean() - mean) * (day.mean() - mean) / day.variance())
                .sum();
        double excess = Math.max(1, (scatter + EXPECTED_DAYS) / (days.size() - 1 + EXPECTED_DAYS));
        return new SharedShift(mean, excess / precision);
    }

    /** How far a survey's error usually lies from zero, in shares of the variance that is expected of it. */
    static double square(SurveyError survey) {
        return survey.error() * survey.error() / (survey.variance() + OF_SURVEY + OF_DAY);
    }

    SharedShift scaled(double factor) {
        return new SharedShift(mean, variance * factor);
    }

    private static Day day(Collection<SurveyError> surveys, double middle) {
        double precision = 0;
        double sum = 0;
        for (SurveyError survey : surveys) {
            double variance = survey.variance() + OF_SURVEY;
            double away = Math.abs(survey.error() - middle) / Math.sqrt(variance + OF_DAY);
            double weight = Math.min(1, FAR / away) / variance;
            precision += weight;
            sum += weight * survey.error();
        }
        return new Day(sum / precision, 1 / precision + OF_DAY);
    }

    private static double middle(List<SurveyError> surveys) {
        double[] sorted =
                surveys.stream().mapToDouble(SurveyError::error).sorted().toArray();
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }

    /**
     * How wrongly all strings seem to be expected: little is known without surveys.
     *
     * @param past of the same strings before
     * @param others what other instruments show at the time, each of which may be off itself
     * @param factor on what is expected of a survey's error, as the estate's surveys show
     */
    static SharedShift ofReference(List<SurveyError> past, List<SurveyError> others, double factor) {
        double precision = 1 / OF_ESTATE;
        double sum = 0;
        if (!past.isEmpty()) {
            SharedShift seen = of(past).scaled(factor);
            double weight = 1 / (seen.variance() + OF_TIME);
            precision += weight;
            sum += weight * seen.mean();
        }
        for (List<SurveyError> one : others.stream()
                .collect(Collectors.groupingBy(SurveyError::instrument, TreeMap::new, Collectors.toList()))
                .values()) {
            SharedShift seen = of(one).scaled(factor);
            double weight = 1 / (seen.variance() + OF_INSTRUMENT);
            precision += weight;
            sum += weight * seen.mean();
        }
        return new SharedShift(sum / precision, 1 / precision);
    }

    SharedShift beyond(SharedShift reference) {
        return new SharedShift(mean - reference.mean(), variance + reference.variance());
    }

    SharedShift plus(SharedShift step) {
        return new SharedShift(mean + step.mean(), variance + step.variance());
    }

    /** Two ways to the same, weighted by how well each is known. */
    SharedShift togetherWith(SharedShift other) {
        double share = other.variance() / (variance + other.variance());
        return new SharedShift(share * mean + (1 - share) * other.mean(), share * variance);
    }
}
