package org.ohmstead.assessment.model.estate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.statistics.Interval;
import org.ohmstead.statistics.KaplanMeier;

/**
 * How long jars of a type have lasted in this estate: the share still in service by age (Kaplan and Meier), and a Weibull
 * law where enough have failed. Jars that left before the register began are not in it, so that it may look better than
 * it was.
 *
 * @param jars stays on record, present ones too
 * @param failures of these, those that ended for the jar's condition
 * @param unexplained of the failures, those of which nobody wrote down why
 * @param takenOut stays that ended for another reason
 * @param longestYears the oldest jar on record
 * @param steps one per age at which jars failed
 * @param weibull null with too few failures
 */
public record LifeCurve(
        String jarType,
        int jars,
        int failures,
        int unexplained,
        int takenOut,
        double longestYears,
        List<Step> steps,
        @Nullable WeibullLife weibull) {

    /** Of the share in service. */
    public static final double LEVEL = 0.95;

    /** Fewer failures fit no law worth the name. */
    public static final int LEAST_FAILURES = 5;

    /** @param low not known, like high, where no jar is left: then both are 0 */
    public record Step(double years, double inService, double low, double high) {}

    public LifeCurve {
        steps = List.copyOf(steps);
    }

    public static LifeCurve of(String jarType, List<Stay> stays) {
        double[] years = stays.stream().mapToDouble(Stay::years).toArray();
        double[] counts = stays.stream().mapToDouble(Stay::count).toArray();
        boolean[] failed = new boolean[years.length];
        for (int i = 0; i < failed.length; i++) {
            failed[i] = stays.get(i).isFailure();
        }
        int failures = count(stays, Stay.End.FAILED) + count(stays, Stay.End.UNEXPLAINED);
        return new LifeCurve(
                jarType,
                stays.stream().mapToInt(Stay::count).sum(),
                failures,
                count(stays, Stay.End.UNEXPLAINED),
                count(stays, Stay.End.TAKEN_OUT),
                stays.stream().mapToDouble(Stay::years).max().orElse(0),
                steps(KaplanMeier.of(years, failed, counts)),
                failures < LEAST_FAILURES ? null : WeibullLife.fit(years, failed, counts));
    }

    private static int count(List<Stay> stays, Stay.End end) {
        return stays.stream()
                .filter(stay -> stay.end() == end)
                .mapToInt(Stay::count)
                .sum();
    }

    private static List<Step> steps(KaplanMeier curve) {
        List<Step> steps = new ArrayList<>();
        for (double time : curve.times()) {
            Interval range = curve.logLogInterval(time, LEVEL);
            steps.add(new Step(time, curve.at(time), orZero(range.lower()), orZero(range.upper())));
        }
        return steps;
    }

    private static double orZero(double value) {
        return Double.isNaN(value) ? 0 : value;
    }

    /** The laws that could be fitted, by jar type. */
    public static Map<String, LifeLine> lines(List<LifeCurve> curves) {
        Map<String, LifeLine> lines = new HashMap<>();
        for (LifeCurve curve : curves) {
            WeibullLife fit = curve.weibull();
            if (fit != null) {
                lines.put(curve.jarType(), fit.line());
            }
        }
        return lines;
    }
}
