package readback.assistant.session;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * The time of a session: begins at a moment of the wall clock and then only counts what passes, so it neither jumps nor
 * goes back when the device's clock is set. Owned by one thread.
 *
 * <p>What passes is what {@link System#nanoTime} counts. While a device is suspended that stands still on some systems;
 * there a suspended hour looks like a clock set forward by an hour, and waits count running time only.
 */
public final class SteadyClock extends Clock {

    /** Smaller differences are the clock being kept right, a little at a time. */
    private static final Duration JUMP = Duration.ofSeconds(10);

    private final Clock wall;
    private final LongSupplier nanoTime;
    private Instant start;
    private final long startedAt;
    private Duration ahead;

    private SteadyClock(Clock wall, LongSupplier nanoTime, Instant start) {
        this.wall = wall;
        this.nanoTime = nanoTime;
        this.start = start;
        this.startedAt = nanoTime.getAsLong();
        this.ahead = Duration.between(start, wall.instant());
    }

    /** A clock that begins now on this machine. */
    public static SteadyClock system() {
        return from(Clock.systemUTC(), System::nanoTime);
    }

    /** A clock that begins now. */
    public static SteadyClock from(Clock wall, LongSupplier nanoTime) {
        return new SteadyClock(wall, nanoTime, wall.instant());
    }

    @Override
    public Instant instant() {
        return start.plusNanos(nanoTime.getAsLong() - startedAt);
    }

    /** By how much the wall clock was set since this was last asked, positive when forward; empty if it was not. */
    public Optional<Duration> changed() {
        Duration now = Duration.between(instant(), wall.instant());
        Duration by = now.minus(ahead);
        if (by.abs().compareTo(JUMP) < 0) {
            return Optional.empty();
        }
        ahead = now;
        return Optional.of(by);
    }

    /**
     * Goes on in the time of a session that a process before this one began.
     *
     * @param changes by how much the wall clock was set while that one ran, positive when forward
     */
    public void goOnAs(Duration changes) {
        start = start.minus(changes);
        ahead = ahead.plus(changes);
    }

    @Override
    public ZoneId getZone() {
        return wall.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return new SteadyClock(wall.withZone(zone), nanoTime, instant());
    }
}
