package org.ohmstead.capacity;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.capacity.model.NextTest;

/**
 * How a string's capacity stands.
 *
 * @param tests those that count, oldest first
 * @param next null while there is none
 * @param pointsPerYear how the percentage moves, by the first and the last test; null with fewer than two
 */
public record CapacityStanding(
        List<CapacityTestView> tests,
        @Nullable NextTest next,
        @Nullable Double pointsPerYear) {

    public @Nullable CapacityTestView last() {
        return tests.isEmpty() ? null : tests.get(tests.size() - 1);
    }
}
