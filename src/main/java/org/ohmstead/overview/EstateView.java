package org.ohmstead.overview;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The estate as far as the reader's reach goes.
 *
 * @param filters how many strings each filter shows
 * @param assessedAt when the latest of the judgements was made
 */
public record EstateView(
        Sentence sentence,
        Counts counts,
        Wall wall,
        List<StringTile> firstInLine,
        List<Held> held,
        Week week,
        java.util.Map<EstateFilter, Long> filters,
        @Nullable Instant assessedAt) {

    public record Counts(
            int areas,
            int sites,
            int strings,
            long jars,
            long act,
            long plan,
            long recheck,
            long overdue,
            long dueWithin30Days) {

        public long asking() {
            return act + plan + recheck;
        }
    }

    /** A survey that waits at the door. */
    public record Held(String uploadId, String title, Instant receivedAt, String why) {}

    /** What happened in the last seven days. */
    public record Week(int surveys, int strings, List<Visit> latest) {}

    public record Visit(long surveyId, long stringId, String title, LocalDate takenOn, String takenBy) {}
}
