package org.ohmstead.intake.check;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.statistics.Quantiles;

/**
 * How far the jars moved against each other since an earlier survey, beside how far they usually do. Two walks never give
 * the same figures: what does not move at all was not measured again, and what moves wildly was measured badly.
 */
final class Likeness {

    private static final double MAD_TO_DEVIATION = 1.4826;
    private static final double SAME = 1e-6;
    /** Where this share of a survey's own values is one value, equal values say nothing. */
    private static final double COARSE = 0.3;

    private Likeness() {}

    static Optional<Remark> copied(SurveyUnderCheck survey) {
        double[] now = survey.laidOut().ohmic();
        if (isCoarse(now)) {
            return Optional.empty();
        }
        ForensicThresholds limits = survey.limits().forensics();
        for (EarlierSurvey earlier : survey.sameKind()) {
            int both = count(now, earlier.ohmic());
            int equal = equal(now, earlier.ohmic());
            if (both >= limits.fewestJars() && equal >= limits.copiedShare() * both) {
                return Optional.of(Remark.of(
                        RemarkCode.COPIED,
                        place(survey),
                        equal + " of " + both + " values as on "
                                + earlier.takenAt()
                                        .atZone(survey.expected().zone())
                                        .toLocalDate(),
                        "no two walks give the same figures"));
            }
        }
        return Optional.empty();
    }

    static Optional<Remark> tooAlike(SurveyUnderCheck survey) {
        ForensicThresholds limits = survey.limits().forensics();
        Scatter scatter = Scatter.of(survey);
        boolean alike = scatter.jars >= limits.alikeJars() && scatter.now < limits.alikeShare() * scatter.habit;
        return alike && copied(survey).isEmpty()
                ? Optional.of(scatter.remark(survey, RemarkCode.COPIED_ALIKE))
                : Optional.empty();
    }

    static Optional<Remark> scattered(SurveyUnderCheck survey) {
        ForensicThresholds limits = survey.limits().forensics();
        Scatter scatter = Scatter.of(survey);
        boolean wild = scatter.jars >= limits.fewestJars()
                && scatter.now > limits.scatterLeast()
                && scatter.now > limits.scatterFactor() * scatter.habit;
        return wild && !WalkOrder.isWrong(survey)
                ? Optional.of(scatter.remark(survey, RemarkCode.SCATTER_HIGH))
                : Optional.empty();
    }

    private static Place place(SurveyUnderCheck survey) {
        return survey.place("all jars", survey.sheet().line(), survey.sheet().columnOf(ColumnKind.JAR_OHMIC));
    }

    private static boolean isCoarse(double[] values) {
        Map<Double, Integer> counts = new HashMap<>();
        Arrays.stream(values)
                .filter(value -> !Double.isNaN(value))
                .forEach(value -> counts.merge(value, 1, Integer::sum));
        int read = counts.values().stream().mapToInt(Integer::intValue).sum();
        int most = counts.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        return most > COARSE * read;
    }

    private static int count(double[] one, double[] other) {
        return (int) both(one, other).count();
    }

    private static int equal(double[] one, double[] other) {
        return (int) both(one, other)
                .filter(i -> Math.abs(one[i] - other[i]) <= SAME * Math.abs(other[i]))
                .count();
    }

    private static IntStream both(double[] one, double[] other) {
        return IntStream.range(0, Math.min(one.length, other.length)).filter(i -> one[i] > 0 && other[i] > 0);
    }

    /** Scatter of the jars' changes about their median, as a share of the value; NaN where there is too little to say. */
    private record Scatter(double now, double habit, int jars) {

        private static final int SURVEYS_FOR_A_HABIT = 3;

        static Scatter of(SurveyUnderCheck survey) {
            List<EarlierSurvey> earlier = survey.sameKind();
            if (earlier.size() < SURVEYS_FOR_A_HABIT || UnitSlips.isOhmicSlipped(survey)) {
                return new Scatter(Double.NaN, Double.NaN, 0);
            }
            double[] steps = IntStream.range(1, earlier.size())
                    .mapToDouble(i ->
                            between(earlier.get(i - 1).ohmic(), earlier.get(i).ohmic()))
                    .toArray();
            double[] last = earlier.get(earlier.size() - 1).ohmic();
            double[] now = survey.laidOut().ohmic();
            return new Scatter(between(last, now), Quantiles.median(steps), count(last, now));
        }

        private static double between(double[] before, double[] after) {
            double[] changes = both(before, after)
                    .mapToDouble(i -> Math.log(after[i] / before[i]))
                    .toArray();
            double middle = Quantiles.median(changes);
            return MAD_TO_DEVIATION
                    * Quantiles.median(Arrays.stream(changes)
                            .map(change -> Math.abs(change - middle))
                            .toArray());
        }

        Remark remark(SurveyUnderCheck survey, RemarkCode code) {
            return Remark.of(
                    code,
                    place(survey),
                    "jars moved by " + percent(now) + " against each other",
                    "about " + percent(habit) + " between this string's surveys");
        }

        private static String percent(double share) {
            return Figures.of(100 * share, "%");
        }
    }
}
