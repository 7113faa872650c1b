package org.ohmstead.capacity;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.capacity.model.JarFinding;
import org.ohmstead.capacity.model.TwoByTwo;
import org.ohmstead.kernel.Urgency;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Sets what the surveys before a capacity test asked of each jar against what the test found. Judged as of the day of the
 * test, with the limits in force today, so that it shows how far today's limits can be trusted.
 */
@Service
@Transactional(readOnly = true)
public class Agreements {

    private final CapacityOutcomes outcomes;
    /** Asked late: whoever judges strings may itself look at capacity tests. */
    private final ObjectProvider<OhmicBefore> ohmic;

    private final Access access;

    Agreements(CapacityOutcomes outcomes, ObjectProvider<OhmicBefore> ohmic, Access access) {
        this.outcomes = outcomes;
        this.ohmic = ohmic;
        this.access = access;
    }

    private record Day(long stringId, LocalDate on) {}

    /** Jar types with at least one tested jar in reach. */
    public List<String> jarTypes() {
        access.require(SEE_ESTATE);
        Set<String> codes = new TreeSet<>();
        outcomes.each(outcome -> codes.add(outcome.jarTypeCode()));
        return List.copyOf(codes);
    }

    public Agreement of(String jarTypeCode) {
        access.require(SEE_ESTATE);
        Map<Day, Map<Integer, OhmicBefore.Asked>> judged = new HashMap<>();
        Set<Long> tests = new HashSet<>();
        List<CapacityOutcome> missed = new ArrayList<>();
        TwoByTwo counts = TwoByTwo.NONE;
        int undecided = 0;
        int unjudged = 0;
        for (CapacityOutcome outcome : outcomes.of(jarTypeCode)) {
            tests.add(outcome.testId());
            Day day = new Day(outcome.stringId(), outcome.testedOn());
            OhmicBefore.@Nullable Asked asked =
                    judged.computeIfAbsent(day, this::before).get(outcome.position());
            if (outcome.finding() == JarFinding.UNDECIDED) {
                undecided++;
            } else if (asked == null) {
                unjudged++;
            } else {
                boolean asking = asked.urgency().compareTo(Urgency.PLAN) >= 0;
                counts = counts.and(asking, outcome.finding().isFailed());
                if (!asking && outcome.finding().isFailed()) {
                    missed.add(outcome);
                }
            }
        }
        Collections.reverse(missed);
        return new Agreement(jarTypeCode, tests.size(), counts, undecided, unjudged, missed);
    }

    private Map<Integer, OhmicBefore.Asked> before(Day day) {
        return ohmic.getObject().asOf(day.stringId(), day.on());
    }
}
