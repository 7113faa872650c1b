package org.ohmstead.programme;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A recorded visit.
 *
 * @param voidedBecause null while it stands
 */
public record VisitView(
        long id,
        long stringId,
        LocalDate visitedOn,
        String visitedBy,
        String note,
        Instant recordedAt,
        String recordedBy,
        @Nullable String voidedBecause,
        List<NewVisit.Item> items) {

    /** Where something was found. */
    public List<NewVisit.Item> findings() {
        return items.stream()
                .filter(item -> item.outcome() == NewVisit.Outcome.FOUND)
                .toList();
    }
}
