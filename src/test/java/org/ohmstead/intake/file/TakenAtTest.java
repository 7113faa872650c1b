package org.ohmstead.intake.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class TakenAtTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    @Test
    void aTimeWithoutOffsetIsTheSitesOwnClock() {
        TakenAt at = new TakenAt(LocalDateTime.parse("2026-07-01T09:42"), null);

        assertThat(at.instant(LONDON)).isEqualTo(Instant.parse("2026-07-01T08:42:00Z"));
        assertThat(at.isPlain(LONDON)).isTrue();
    }

    @Test
    void aTimeThatOccursTwiceIsTheFirstOfTheTwo() {
        TakenAt at = new TakenAt(LocalDateTime.parse("2026-10-25T01:30"), null);

        assertThat(at.instant(LONDON)).isEqualTo(Instant.parse("2026-10-25T00:30:00Z"));
        assertThat(at.isPlain(LONDON)).isFalse();
    }

    @Test
    void aTimeThatNeverOccursMovesForwardByTheGap() {
        TakenAt at = new TakenAt(LocalDateTime.parse("2026-03-29T01:30"), null);

        assertThat(at.instant(LONDON)).isEqualTo(Instant.parse("2026-03-29T01:30:00Z"));
        assertThat(at.isPlain(LONDON)).isFalse();
    }

    @Test
    void anOffsetSettlesTheInstantAndTheDateIsTheSitesOwn() {
        TakenAt at = new TakenAt(LocalDateTime.parse("2026-11-18T23:30"), ZoneOffset.ofHours(-5));

        assertThat(at.instant(LONDON)).isEqualTo(Instant.parse("2026-11-19T04:30:00Z"));
        assertThat(at.date(LONDON)).isEqualTo(LocalDate.parse("2026-11-19"));
    }
}
