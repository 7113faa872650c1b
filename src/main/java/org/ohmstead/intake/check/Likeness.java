package org.ohmstead.intake.check;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.ohmstead.intake.file.ColumnKind;

/**
 * How far the jars moved against each other since an earlier survey, beside how far they usually do. Two walks never give
 * the same figures: what does not move at all was not measured again, and what moves wildly was measured badly.
 */
final class Likeness {

    private static final double SAME = 1e-6;
    /** Where this share of a survey's own values is one value, equal values say nothing. */
    private static final double COARSE = 0.3;
    /** Readings too coarse for the string's movements show none where there is one. */
    private static final double STEPS_TO_TELL = 2;

    private Likeness() {}

    static Optional<Remark> copied(SurveyUnderCheck survey) {
        double[] now = survey.laidOut().ohmic();
        if (isCoarse(now)) {
            return Optional.empty();
        }
        ForensicThresholds limits = survey.limits().forensics();
        for (EarlierSurvey earlier : survey.sameKind()) {
            int both = Movement.count(now, earlier.ohmic());
            int equal = equal(now, earlier.ohmic());
            if (both >= limits.fewestJars() && equal >= limits.copiedShare() * both) {
                return Optional.of(Remark.of(
                        RemarkCode.COPIED,
                        place(survey),
                        equal + " of " + both + " values as on " + day(earlier, survey),
                        "no two walks give the same figures"));
            }
        }
        return Optional.empty();
    }

    /** Measured against each of the earlier surveys: any of them may be the one that was carried over. */
    static Optional<Remark> tooAlike(SurveyUnderCheck survey) {
        ForensicThresholds limits = survey.limits().forensics();
        Habit habit = Habit.before(survey);
        double[] now = survey.laidOut().ohmic();
        if (!(habit.movement() > habit.step() * STEPS_TO_TELL) || copied(survey).isPresent()) {
            return Optional.empty();
        }
        return habit.earlier().stream()
                .filter(earlier -> {
                    int jars = Movement.count(earlier.ohmic(), now);
                    return jars >= limits.fewestJars()
                            && Movement.between(earlier.ohmic(), now) < limits.alikeShareOf(jars) * habit.movement();
                })
                .findFirst()
                .map(earlier -> moved(
                        survey,
                        RemarkCode.COPIED_ALIKE,
                        Movement.between(earlier.ohmic(), now),
                        " since " + day(earlier, survey),
                        habit));
    }

    static Optional<Remark> scattered(SurveyUnderCheck survey) {
        ForensicThresholds limits = survey.limits().forensics();
        Habit habit = Habit.before(survey);
        double[] now = survey.laidOut().ohmic();
        int jars = habit.jarsWith(now);
        if (jars < limits.fewestJars()) {
            return Optional.empty();
        }
        double movement = habit.movementTo(now);
        double usual = Math.max(habit.movement(), habit.step());
        boolean wild = movement > limits.scatterLeast() && movement > limits.scatterFactorOf(jars) * usual;
        return wild && !WalkOrder.isWrong(survey)
                ? Optional.of(moved(survey, RemarkCode.SCATTER_HIGH, movement, "", habit))
                : Optional.empty();
    }

    private static Remark moved(SurveyUnderCheck survey, RemarkCode code, double movement, String since, Habit habit) {
        return Remark.of(
                code,
                place(survey),
                "jars moved by " + percent(movement) + " against each other" + since,
                "about " + percent(habit.movement()) + " between this string's surveys");
    }

    private static String percent(double share) {
        return Figures.of(100 * share, "%");
    }

    private static LocalDate day(EarlierSurvey earlier, SurveyUnderCheck survey) {
        return earlier.takenAt().atZone(survey.expected().zone()).toLocalDate();
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

    private static int equal(double[] one, double[] other) {
        return (int) Movement.both(one, other)
                .filter(i -> Math.abs(one[i] - other[i]) <= SAME * Math.abs(other[i]))
                .count();
    }
}
