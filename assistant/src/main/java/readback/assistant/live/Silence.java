package readback.assistant.live;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Measures for how long nothing has happened while someone is listened to. Owned by one thread; knows no clock. */
final class Silence {

    private Optional<Duration> patience = Optional.empty();
    private Optional<Instant> since = Optional.empty();

    /** Waits so long from now on; for ever when empty. */
    void bear(Optional<Duration> longest) {
        patience = longest;
        since = Optional.empty();
    }

    /**
     * Whether it has lasted as long as is borne; then it begins anew.
     *
     * @param quiet whether nothing happens now: someone is listened to and does not speak
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
