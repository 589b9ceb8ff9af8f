package readback.assistant.live;

import java.time.Duration;
import java.util.Optional;

/**
 * Tells which words should be answered in advance while someone is still speaking: words that have not changed for a
 * moment may be all that will be said. Owned by one thread; time comes from {@link System#nanoTime}.
 */
final class EarlyResponse {

    /** How long words must stay unchanged to be answered in advance; decision 0014. */
    private static final Duration STEADY = Duration.ofMillis(80);

    private String words = "";
    private long since;
    private boolean answered = true;

    /** These are the words so far; blank when nobody speaks any more. */
    void partial(String next, long now) {
        words = next;
        since = now;
        answered = next.isBlank();
    }

    /** Whether someone is in the middle of speaking. */
    boolean speaking() {
        return !words.isBlank();
    }

    /** Words to make the answer to ready now; each is given once. */
    Optional<String> due(long now) {
        if (answered || now - since < STEADY.toNanos()) {
            return Optional.empty();
        }
        answered = true;
        return Optional.of(words);
    }
}
