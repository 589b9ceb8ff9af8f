package readback.assistant.live;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Keeps what the voice was cut short in until it is known who did it. Talk of others and noise cut it short too; nobody
 * should have to ask for a verdict that a passer-by has silenced, so it is said again when nothing came of them. Owned
 * by one thread; time comes from {@link System#nanoTime}.
 */
final class Interruption {

    /** How long it has to be quiet before Readback goes on; decision 0019. */
    private static final Duration QUIET = Duration.ofMillis(1500);

    private List<String> unsaid = List.of();
    private OptionalLong quietSince = OptionalLong.empty();

    /** This was not said to its end. */
    void cut(List<String> texts) {
        if (!texts.isEmpty()) {
            unsaid = List.copyOf(texts);
            quietSince = OptionalLong.empty();
        }
    }

    /** It was meant: what was said instead is answered. */
    void meant() {
        unsaid = List.of();
    }

    /** What is to be said again now, when nobody has spoken for a while; it is given once. */
    Optional<List<String>> due(boolean someoneSpeaks, long now) {
        if (unsaid.isEmpty()) {
            return Optional.empty();
        }
        if (someoneSpeaks || quietSince.isEmpty()) {
            quietSince = OptionalLong.of(now);
            return Optional.empty();
        }
        if (now - quietSince.getAsLong() < QUIET.toNanos()) {
            return Optional.empty();
        }
        List<String> again = unsaid;
        meant();
        return Optional.of(again);
    }
}
