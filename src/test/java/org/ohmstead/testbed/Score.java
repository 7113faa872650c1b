package org.ohmstead.testbed;

import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * How well a method foresaw failures within twelve months.
 *
 * @param auc chance that a failing unit-survey scores above a healthy one
 * @param prAuc mean precision over the failing unit-surveys
 * @param found1 share of failures flagged in their last twelve months, 1 % of healthy unit-surveys being flagged
 * @param lead1 months from the first such flag to the failure, mean over those found
 * @param found5 likewise with 5 % flagged
 * @param coverage how often the 80 % interval held for crossings less than 4 years away; NaN for methods without one
 * @param coverageSaid how often it held where the method's median said less than 4 years
 * @param brier mean squared error of the probability; NaN for methods without one
 * @param costPerString missed failures at 100 and flags on healthy units at 5, per string, at the 1 % threshold
 */
record Score(
        double auc,
        double prAuc,
        double found1,
        double lead1,
        double found5,
        double coverage,
        double coverageSaid,
        double brier,
        double costPerString,
        int failures,
        int rows) {

    static Score of(List<Verdict> verdicts) {
        List<Verdict> counted = verdicts.stream()
                .filter(Verdict::counts)
                .sorted(Comparator.comparingDouble((Verdict v) -> v.score()).reversed())
                .toList();
        Flags one = Flags.at(counted, .01);
        Flags five = Flags.at(counted, .05);
        long strings = counted.stream().mapToInt(Verdict::string).distinct().count();
        double cost = (100.0 * (one.failures() - one.found()) + 5.0 * one.falseFlags()) / Math.max(1, strings);
        return new Score(
                auc(counted),
                averagePrecision(counted),
                one.share(),
                one.leadMonths(),
                five.share(),
                coverage(counted, v -> v.yearsToCrossing() < 4),
                coverage(counted, v -> v.middle() < 4),
                brier(counted),
                cost,
                one.failures(),
                counted.size());
    }

    /** By mean ranks, so that ties count half. */
    private static double auc(List<Verdict> sorted) {
        double positives = 0;
        double negatives = 0;
        double won = 0;
        int i = sorted.size() - 1;
        while (i >= 0) {
            int j = i;
            double failing = 0;
            double healthy = 0;
            while (j >= 0 && sorted.get(j).score() == sorted.get(i).score()) {
                if (sorted.get(j--).isFailing()) {
                    failing++;
                } else {
                    healthy++;
                }
            }
            won += failing * (negatives + healthy / 2);
            positives += failing;
            negatives += healthy;
            i = j;
        }
        return won / (positives * negatives);
    }

    /** The step-wise sum over thresholds of precision times gain in recall; equal scores share one threshold. */
    private static double averagePrecision(List<Verdict> sorted) {
        double found = 0;
        double sum = 0;
        int i = 0;
        while (i < sorted.size()) {
            double before = found;
            double threshold = sorted.get(i).score();
            while (i < sorted.size() && sorted.get(i).score() == threshold) {
                found += sorted.get(i++).isFailing() ? 1 : 0;
            }
            sum += (found - before) * found / i;
        }
        return sum / found;
    }

    private static double coverage(List<Verdict> counted, Predicate<Verdict> near) {
        List<Verdict> asked = counted.stream()
                .filter(v -> v.yearsToCrossing() > 0 && !Double.isNaN(v.low()))
                .filter(near)
                .toList();
        return asked.stream().filter(Verdict::intervalHolds).count() / (double) asked.size();
    }

    private static double brier(List<Verdict> counted) {
        return counted.stream()
                .filter(v -> !Double.isNaN(v.probability()))
                .mapToDouble(v -> Math.pow(v.probability() - (v.isFailing() ? 1 : 0), 2))
                .average()
                .orElse(Double.NaN);
    }

    /** What a threshold finds. */
    private record Flags(int failures, int found, int falseFlags, double leadMonths) {
        /** Flags what scores above the highest threshold that this share of healthy ones allows; ties go unflagged. */
        static Flags at(List<Verdict> sorted, double falseShare) {
            double[] healthy = sorted.stream()
                    .filter(v -> !v.isFailing())
                    .mapToDouble(Verdict::score)
                    .toArray();
            int allowed = (int) (falseShare * healthy.length);
            double threshold = allowed < healthy.length ? healthy[allowed] : Double.NEGATIVE_INFINITY;
            Set<Truth> failures = Collections.newSetFromMap(new IdentityHashMap<>());
            Map<Truth, Double> lead = new IdentityHashMap<>();
            for (Verdict v : sorted) {
                if (v.isFailing()) {
                    failures.add(v.truth());
                    if (v.score() > threshold) {
                        lead.merge(v.truth(), v.yearsToFailure(), Math::max);
                    }
                }
            }
            int flagged =
                    (int) Arrays.stream(healthy).filter(s -> s > threshold).count();
            double months =
                    lead.values().stream().mapToDouble(y -> 12 * y).average().orElse(Double.NaN);
            return new Flags(failures.size(), lead.size(), flagged, months);
        }

        double share() {
            return failures == 0 ? Double.NaN : found / (double) failures;
        }
    }

    static final String TITLES =
            "| method | AUC | PR-AUC | found at 1 % | lead, months | found at 5 % | holds, crossing < 4 y |"
                    + " holds, said < 4 y | Brier | cost a string |\n|---|---|---|---|---|---|---|---|---|---|";

    /** Mean over several estates. */
    static Score mean(List<Score> scores) {
        return new Score(
                mean(scores, Score::auc),
                mean(scores, Score::prAuc),
                mean(scores, Score::found1),
                mean(scores, Score::lead1),
                mean(scores, Score::found5),
                mean(scores, Score::coverage),
                mean(scores, Score::coverageSaid),
                mean(scores, Score::brier),
                mean(scores, Score::costPerString),
                scores.stream().mapToInt(Score::failures).sum(),
                scores.stream().mapToInt(Score::rows).sum());
    }

    private static double mean(List<Score> scores, ToDoubleFunction<Score> of) {
        return scores.stream().mapToDouble(of).average().orElse(Double.NaN);
    }

    String row(String name) {
        return String.format(
                Locale.ROOT,
                "| %s | %.3f | %.3f | %.2f | %.1f | %.2f | %s | %s | %s | %.0f |",
                name,
                auc,
                prAuc,
                found1,
                lead1,
                found5,
                orDash("%.2f", coverage),
                orDash("%.2f", coverageSaid),
                orDash("%.4f", brier),
                costPerString);
    }

    private static String orDash(String format, double value) {
        return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, format, value);
    }
}
