package org.ohmstead.programme;

import java.time.LocalDate;
import java.util.List;

/**
 * A proposed plan.
 *
 * @param first its first day, no earlier than today
 * @param naiveVisits how many visits it would take to do everything by itself on its own last workday
 * @param missed what would be late, of what is not late already; the planner leaves none
 */
public record RoundPlan(LocalDate first, LocalDate last, List<SuggestedRound> rounds, int naiveVisits, long missed) {

    public int saved() {
        return naiveVisits - rounds.size();
    }

    public long overdue() {
        return rounds.stream().mapToLong(round -> round.overdue(first)).sum();
    }
}
