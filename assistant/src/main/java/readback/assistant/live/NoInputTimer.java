package readback.assistant.live;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Measures how long nothing has happened while Readback listens. Owned by one thread; knows no clock. */
final class NoInputTimer {

    private Optional<Duration> longest = Optional.empty();
    private Optional<Instant> since = Optional.empty();

    /** Sets how long to wait from now on; for ever when empty. */
    void restart(Optional<Duration> next) {
        longest = next;
        since = Optional.empty();
    }

    /**
     * Whether nothing was heard for the whole time; then the time begins again.
     *
     * @param quiet whether nothing happens now: Readback listens and nobody speaks
     */
    boolean over(boolean quiet, Instant now) {
        if (!quiet) {
            since = Optional.empty();
            return false;
        }
        Instant begun = since.orElse(now);
        since = Optional.of(begun);
        boolean isOver = longest.isPresent() && !now.isBefore(begun.plus(longest.get()));
        if (isOver) {
            since = Optional.empty();
        }
        return isOver;
    }
}
