package org.ohmstead.support;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** Stands at one moment until a test moves it. */
public final class SettableClock extends Clock {

    public static final Instant START = Instant.parse("2026-03-10T09:30:00Z");

    private volatile Instant now = START;

    public void set(Instant instant) {
        now = instant;
    }

    public void tick(Duration duration) {
        now = now.plus(duration);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.fixed(now, zone);
    }

    @Override
    public Instant instant() {
        return now;
    }
}
