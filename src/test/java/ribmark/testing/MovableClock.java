package ribmark.testing;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands still until a test moves it. */
public final class MovableClock extends Clock {

    private volatile Instant now = Instant.parse("2026-11-25T09:00:00Z");

    /** Moves on, or back. */
    public void move(Duration by) {
        now = now.plus(by);
    }

    /** Moves to a moment. */
    public void to(String moment) {
        now = Instant.parse(moment);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }

    @Override
    public Instant instant() {
        return now;
    }
}
