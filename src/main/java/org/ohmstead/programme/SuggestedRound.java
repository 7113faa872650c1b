package org.ohmstead.programme;

import java.time.LocalDate;
import java.util.List;

/**
 * A visit that the planner proposes.
 *
 * @param earliest and {@code latest}: between them it may be moved and still does the same in time
 * @param overCapacity the crew has more visits on that day than it can make
 */
public record SuggestedRound(
        String siteCode,
        String siteName,
        String areaName,
        LocalDate on,
        LocalDate earliest,
        LocalDate latest,
        boolean overCapacity,
        List<RoundTask> tasks) {

    /** Names it among the suggestions of one plan. */
    public String key() {
        return siteCode + "/" + on;
    }

    /** What is late already before the plan begins. */
    public long overdue(LocalDate first) {
        return tasks.stream().filter(task -> task.isMissedBy(first)).count();
    }
}
