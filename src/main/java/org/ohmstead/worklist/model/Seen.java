package org.ohmstead.worklist.model;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.StringJudgement;

/**
 * What was read of a string last, and since when its jars and joints are as they are.
 *
 * @param asOf day of the last survey that counts
 * @param surveyId null while there is none
 * @param retiredOn null while it serves
 * @param tests the capacity tests that count, by day; oldest first
 */
public record Seen(
        LocalDate today,
        LocalDate asOf,
        @Nullable Long surveyId,
        @Nullable LocalDate retiredOn,
        Map<Subject, Unit> units,
        java.util.List<Test> tests) {

    /** @param readOn null when it was never read */
    public record Unit(@Nullable LocalDate since, @Nullable LocalDate readOn) {}

    /** A capacity test. */
    public record Test(long id, LocalDate on) {}

    public Seen {
        units = Map.copyOf(units);
        tests = java.util.List.copyOf(tests);
    }

    public static Seen of(
            StringJudgement judgement, LocalDate today, @Nullable LocalDate retiredOn, java.util.List<Test> tests) {
        Map<Subject, Unit> units = new HashMap<>();
        LocalDate asOf = judgement.asOf();
        units.put(Subject.STRING, new Unit(null, judgement.surveyId() == null ? null : asOf));
        judgement
                .jars()
                .forEach(jar -> units.put(Subject.jar(jar.position()), new Unit(jar.sittingSince(), jar.readOn())));
        judgement
                .links()
                .forEach(link -> units.put(Subject.link(link.ordinal()), new Unit(link.madeOn(), link.readOn())));
        return new Seen(today, asOf, judgement.surveyId(), retiredOn, units, tests);
    }

    /** Null when the register has no such thing. */
    @Nullable
    Unit unit(Subject subject) {
        return units.get(subject);
    }

    /** Day of the last capacity test that counts; null without any. */
    public @Nullable LocalDate testedOn() {
        return tests.isEmpty() ? null : tests.get(tests.size() - 1).on();
    }
}
