package org.ohmstead.capacity;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.capacity.model.JarFinding;

/**
 * How one jar came out of one standing capacity test.
 *
 * @param jarTypeCode of the jar that sat there on that day
 * @param serial null where nobody noted it
 * @param sittingSince null where the register does not say
 * @param ownPercent of rated capacity by the jar's own time; null without a record of it
 * @param stringPercent of the whole string; of the jar at least that much, when it is sound without a time of its own
 */
public record CapacityOutcome(
        long testId,
        long stringId,
        int position,
        String jarTypeCode,
        @Nullable String serial,
        @Nullable LocalDate sittingSince,
        LocalDate testedOn,
        JarFinding finding,
        @Nullable Double ownPercent,
        double stringPercent) {}
