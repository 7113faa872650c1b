package org.ohmstead.assessment;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A walk over the whole estate.
 *
 * @param stringsTotal strings that have surveys, counted at the start
 * @param stringsJudged those of them that had news
 */
public record RunView(
        long id,
        Instant requestedAt,
        String requestedBy,
        @Nullable Instant startedAt,
        @Nullable Instant finishedAt,
        int stringsTotal,
        int stringsSeen,
        int stringsJudged) {}
