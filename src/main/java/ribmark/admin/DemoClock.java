package ribmark.admin;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;

/** The clock of the demo: it stands at the moments that are told while the college is filled in, and runs from then on. */
public final class DemoClock extends Clock {

    private final Clock real;
    private volatile Optional<Instant> standing = Optional.empty();

    /** The real clock goes on behind it. */
    public DemoClock(Clock real) {
        this.real = real;
    }

    /** Stands at a moment of the past. */
    void standAt(Instant moment) {
        standing = Optional.of(moment);
    }

    /** Lets time run again. */
    void run() {
        standing = Optional.empty();
    }

    @Override
    public Instant instant() {
        return standing.orElseGet(real::instant);
    }

    @Override
    public ZoneId getZone() {
        return real.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return real.withZone(zone);
    }
}
