package org.cagewall.desk;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that a test moves by hand, read by any thread, beginning in the morning of {@link TestDesk#TODAY}. */
public final class HandClock extends Clock {

    private volatile Instant now = Instant.parse("2026-04-14T07:00:00Z");

    /** Sets the time of day where the birdroom is. */
    public void to(LocalTime time, ZoneId zone) {
        now = TestDesk.TODAY.atTime(time).atZone(zone).toInstant();
    }

    public void pass(Duration duration) {
        now = now.plus(duration);
    }

    /** The machine's running time that goes with it. */
    public long nanos() {
        return now.getEpochSecond() * 1_000_000_000L + now.getNano();
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
