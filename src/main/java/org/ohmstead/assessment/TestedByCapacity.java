package org.ohmstead.assessment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.assessment.model.estate.TestedJar;
import org.ohmstead.capacity.CapacityOutcome;
import org.ohmstead.capacity.CapacityOutcomes;
import org.ohmstead.capacity.OhmicBefore;
import org.ohmstead.capacity.model.JarFinding;
import org.springframework.stereotype.Component;

/**
 * Sets what capacity tests decided of jars beside the rise that the surveys before had shown. Jars that the test left
 * undecided, or that had no reading to compare, are left out.
 */
@Component
class TestedByCapacity implements TestedJars {

    private final CapacityOutcomes outcomes;
    private final OhmicBefore ohmic;
    private final Access access;

    TestedByCapacity(CapacityOutcomes outcomes, OhmicBefore ohmic, Access access) {
        this.outcomes = outcomes;
        this.ohmic = ohmic;
        this.access = access;
    }

    private record Day(long stringId, LocalDate on) {}

    /** All see the same lesson, whatever their reach: jar types belong to no area. */
    @Override
    public Map<String, List<TestedJar>> byJarType() {
        return access.asSystem(Assessments.ACTOR, this::gather);
    }

    private Map<String, List<TestedJar>> gather() {
        Map<Day, Map<Integer, OhmicBefore.Asked>> judged = new HashMap<>();
        Map<String, List<TestedJar>> found = new HashMap<>();
        outcomes.each(outcome -> {
            Day day = new Day(outcome.stringId(), outcome.testedOn());
            TestedJar jar = jar(
                    outcome,
                    judged.computeIfAbsent(day, any -> ohmic.asOf(any.stringId(), any.on()))
                            .get(outcome.position()));
            if (jar != null) {
                found.computeIfAbsent(outcome.jarTypeCode(), any -> new ArrayList<>())
                        .add(jar);
            }
        });
        return found;
    }

    private static @Nullable TestedJar jar(CapacityOutcome outcome, OhmicBefore.@Nullable Asked before) {
        Double change = before == null ? null : before.changeOnBaseline();
        boolean decided =
                outcome.finding() == JarFinding.SOUND || outcome.finding().isFailed();
        return change == null || change <= -1 || !decided
                ? null
                : new TestedJar(Math.log1p(change), outcome.finding().isFailed());
    }
}
