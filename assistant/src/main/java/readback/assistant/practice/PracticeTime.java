package readback.assistant.practice;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.function.LongSupplier;
import readback.assistant.session.SteadyClock;

/** The time of a practice call: as fast as real time, or faster while one waits. Any thread. */
public final class PracticeTime {

    private final Clock wall;
    private final LongSupplier real;
    private final Instant start;
    private long reckonedAt;
    private double passed;
    private double pace = 1;

    /**
     * @param wall tells when the call begins
     * @param real nanoseconds, as {@link System#nanoTime} counts them
     */
    public PracticeTime(Clock wall, LongSupplier real) {
        this.wall = wall;
        this.real = real;
        this.start = wall.instant();
        this.reckonedAt = real.getAsLong();
    }

    /** The time of this machine. */
    public static PracticeTime system() {
        return new PracticeTime(Clock.systemUTC(), System::nanoTime);
    }

    /** From now on so much faster than real time; 1 is as fast. */
    public synchronized void pace(double times) {
        passed = nanos();
        reckonedAt = real.getAsLong();
        pace = times;
    }

    /** This much is over at once. */
    public synchronized void leap(Duration time) {
        passed += time.toNanos();
    }

    /** The clock that a session goes by. */
    public SteadyClock clock() {
        return SteadyClock.from(
                new Clock() {
                    @Override
                    public Instant instant() {
                        return start.plusNanos((long) nanos());
                    }

                    @Override
                    public ZoneId getZone() {
                        return wall.getZone();
                    }

                    @Override
                    public Clock withZone(ZoneId zone) {
                        return PracticeTime.this.wall.withZone(zone);
                    }
                },
                () -> (long) nanos());
    }

    private synchronized double nanos() {
        return passed + pace * (real.getAsLong() - reckonedAt);
    }
}
