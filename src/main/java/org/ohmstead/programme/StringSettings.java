package org.ohmstead.programme;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.programme.rules.Election;
import org.ohmstead.programme.rules.OwnInterval;
import org.ohmstead.programme.rules.Waiver;

/**
 * What people decided for a string; the lists oldest first, the maps by code of the requirement.
 *
 * @param assignments which pack from when
 */
record StringSettings(
        List<Assignment> assignments,
        Map<String, List<Election>> elections,
        Map<String, List<OwnInterval>> ownIntervals,
        Map<String, List<Waiver>> waivers) {

    static final StringSettings NONE = new StringSettings(List.of(), Map.of(), Map.of(), Map.of());

    record Assignment(LocalDate from, String pack) {}

    @Nullable
    Assignment inForce(LocalDate day) {
        Assignment inForce = null;
        for (Assignment assignment : assignments) {
            inForce = assignment.from().isAfter(day) ? inForce : assignment;
        }
        return inForce;
    }
}
