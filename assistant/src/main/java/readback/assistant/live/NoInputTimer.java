package readback.assistant.live;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Measures how long nothing has happened while Readback listens. Owned by one thread; knows no clock. */
final class NoInputTimer {

    private Optional<Duration> patience = Optional.empty();
    private Optional<Instant> since = Optional.empty();

    /** Waits this long from now on; for ever when empty. */
    void bear(Optional<Duration> longest) {
        patience = longest;
        since = Optional.empty();
    }

    /**
     * Whether it has lasted its full time; then it begins again.
     *
     * @param quiet whether nothing happens now: Readback listens and nobody speaks
     */
    boolean tooLong(boolean quiet, Instant now) {
        if (!quiet) {
            since = Optional.empty();
            return false;
        }
        Instant begun = since.orElse(now);
        since = Optional.of(begun);
        boolean over = patience.isPresent() && !now.isBefore(begun.plus(patience.get()));
        if (over) {
            since = Optional.empty();
        }
        return over;
    }
}
