package org.ohmstead.intake.history;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A history and how far it is.
 *
 * @param counts how many files have each outcome; those that no file has are left out
 * @param elapsed since the first file was begun
 */
public record HistoryView(
        UUID id,
        String fileName,
        String sha256,
        long byteCount,
        Instant receivedAt,
        String receivedBy,
        @Nullable Instant finishedAt,
        Duration elapsed,
        Map<FileOutcome, Long> counts) {

    public HistoryView {
        counts = Map.copyOf(counts);
    }

    public long count(FileOutcome outcome) {
        return counts.getOrDefault(outcome, 0L);
    }

    public long files() {
        return counts.values().stream().mapToLong(Long::longValue).sum();
    }

    public long done() {
        return files() - count(FileOutcome.WAITING);
    }

    public boolean isUnderWay() {
        return finishedAt == null;
    }

    /** Files worked through in a second; 0 while nothing can be said. */
    public double filesPerSecond() {
        double seconds = elapsed.toMillis() / 1_000.0;
        return seconds <= 0 ? 0 : done() / seconds;
    }

    /** How long the waiting files will take at the rate so far; null while nothing can be said. */
    public @Nullable Duration remaining() {
        double rate = filesPerSecond();
        return rate <= 0 ? null : Duration.ofSeconds(Math.round(count(FileOutcome.WAITING) / rate));
    }
}
