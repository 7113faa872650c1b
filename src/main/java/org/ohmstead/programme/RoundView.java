package org.ohmstead.programme;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A planned round: one visit to one site.
 *
 * @param crew who goes; empty while nobody is named
 * @param sequence how often it was changed
 * @param cancelledBecause null while it stands
 */
public record RoundView(
        long id,
        String siteCode,
        String siteName,
        String areaCode,
        String areaName,
        LocalDate plannedOn,
        String crew,
        String note,
        int sequence,
        Instant madeAt,
        Instant changedAt,
        @Nullable String cancelledBecause,
        List<RoundTask> tasks) {

    public long open() {
        return tasks.stream().filter(task -> !task.done()).count();
    }

    public boolean isDone() {
        return !tasks.isEmpty() && open() == 0;
    }

    /** The earliest day on which something of it is late. */
    public @Nullable LocalDate latest() {
        return tasks.stream()
                .filter(task -> !task.done())
                .map(RoundTask::dueOn)
                .min(LocalDate::compareTo)
                .orElse(null);
    }

    public boolean isTooLate() {
        LocalDate latest = latest();
        return latest != null && plannedOn.isAfter(latest);
    }

    /** The ids of its strings, in order. */
    public List<Long> stringIds() {
        return tasks.stream().map(RoundTask::stringId).distinct().sorted().toList();
    }

    RoundView with(List<RoundTask> judged) {
        return new RoundView(
                id,
                siteCode,
                siteName,
                areaCode,
                areaName,
                plannedOn,
                crew,
                note,
                sequence,
                madeAt,
                changedAt,
                cancelledBecause,
                judged);
    }
}
