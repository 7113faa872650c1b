package org.ohmstead.capacity;

import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.capacity.model.JarFinding;
import org.ohmstead.capacity.model.JarResult;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.OccupancyView;
import org.ohmstead.fleet.StringBlueprint;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How jars came out of capacity tests, across strings. */
@Service
@Transactional(readOnly = true)
public class CapacityOutcomes {

    private final FleetRegister register;
    private final CapacityTable table;
    private final Access access;

    CapacityOutcomes(FleetRegister register, CapacityTable table, Access access) {
        this.register = register;
        this.table = table;
        this.access = access;
    }

    /** Every standing test in reach that shows capacity, the latest first. */
    public List<CapacityTestView> tests() {
        access.require(SEE_ESTATE);
        return table.counting(access.reach());
    }

    /** Jars of that type in every standing test in reach, by the day of the test; those not read are left out. */
    public List<CapacityOutcome> of(String jarTypeCode) {
        List<CapacityOutcome> outcomes = new ArrayList<>();
        each(outcome -> {
            if (outcome.jarTypeCode().equals(jarTypeCode)) {
                outcomes.add(outcome);
            }
        });
        return outcomes;
    }

    /** Jars of all types in every standing test in reach, oldest test first; those not read are left out. */
    public void each(Consumer<CapacityOutcome> consumer) {
        List<CapacityTestView> tests = new ArrayList<>(tests());
        java.util.Collections.reverse(tests);
        Map<Long, StringBlueprint> blueprints = register.blueprints(
                tests.stream().map(CapacityTestView::stringId).distinct().toList());
        for (CapacityTestView test : tests) {
            StringBlueprint blueprint = Objects.requireNonNull(blueprints.get(test.stringId()));
            test.jars().stream()
                    .filter(jar -> jar.finding() != JarFinding.UNREAD)
                    .forEach(jar -> consumer.accept(outcome(test, jar, blueprint)));
        }
    }

    private static CapacityOutcome outcome(CapacityTestView test, JarResult jar, StringBlueprint blueprint) {
        @Nullable
        OccupancyView sitting = blueprint.occupancies().stream()
                .filter(one -> one.position() == jar.position() && one.during().contains(test.testedOn()))
                .findFirst()
                .orElse(null);
        return new CapacityOutcome(
                test.id(),
                test.stringId(),
                jar.position(),
                sitting == null ? blueprint.string().jarTypeCode() : sitting.jarTypeCode(),
                sitting == null ? null : sitting.serial(),
                sitting == null ? null : sitting.during().from(),
                test.testedOn(),
                jar.finding(),
                jar.ownPercent(),
                test.capacity().percent());
    }
}
