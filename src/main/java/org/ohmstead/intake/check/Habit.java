package org.ohmstead.intake.check;

import java.util.List;
import java.util.stream.IntStream;
import org.ohmstead.statistics.Quantiles;

/**
 * How far the jars of a string usually move against each other from one survey to the next.
 *
 * @param movement as a share of the value
 * @param step the coarsest last digit of the surveys and of the new one, as a share of the value
 * @param earlier the surveys it was learned from, oldest first
 */
record Habit(double movement, double step, List<EarlierSurvey> earlier) {

    private static final int SURVEYS_FOR_A_HABIT = 3;
    /** Of the difference of two readings, against that of a reading from the mean of two. */
    private static final double TWO_FOR_THREE_HALVES = Math.sqrt(2 / 1.5);

    /** Without movement where there is too little to learn from, or the new survey's unit is in doubt. */
    static Habit before(SurveyUnderCheck survey) {
        List<EarlierSurvey> earlier = survey.sameKind();
        if (earlier.size() < SURVEYS_FOR_A_HABIT || UnitSlips.isOhmicSlipped(survey)) {
            return new Habit(Double.NaN, Double.NaN, List.of());
        }
        double[] steps = IntStream.range(1, earlier.size())
                .mapToDouble(i -> Movement.between(
                        earlier.get(i - 1).ohmic(), earlier.get(i).ohmic()))
                .toArray();
        double step = step(survey.laidOut().ohmic());
        for (EarlierSurvey one : earlier) {
            step = Math.max(step, step(one.ohmic()));
        }
        return new Habit(Quantiles.median(steps), step, earlier);
    }

    private static double step(double[] ohmic) {
        return LastDigits.of(ohmic).step() / Quantiles.median(ohmic);
    }

    /** From the mean of the last two surveys, on the scale of a movement between two surveys. */
    double movementTo(double[] now) {
        return TWO_FOR_THREE_HALVES * Movement.between(lastTwo(), now);
    }

    int jarsWith(double[] now) {
        return earlier.isEmpty() ? 0 : Movement.count(lastTwo(), now);
    }

    private double[] lastTwo() {
        double[] last = earlier.get(earlier.size() - 1).ohmic();
        double[] before = earlier.get(earlier.size() - 2).ohmic();
        return IntStream.range(0, Math.min(last.length, before.length))
                .mapToDouble(i -> (last[i] + before[i]) / 2)
                .toArray();
    }
}
