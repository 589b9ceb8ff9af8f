package readback.assistant.live;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Holds back what a session says first. Nobody is heard while Readback speaks into the room, and someone who knows the
 * job begins at once. So it listens for a moment before it speaks, and leaves this out when someone was quicker. Owned
 * by one thread; time comes from {@link System#nanoTime}.
 */
final class Welcome {

    /** How long it listens before it speaks; decision 0014. */
    private static final Duration MOMENT = Duration.ofMillis(1200);

    private List<String> texts = List.of();
    private OptionalLong since = OptionalLong.empty();

    /** These are to be said first. */
    void hold(List<String> first) {
        texts = List.copyOf(first);
    }

    /** Someone was quicker. */
    void drop() {
        texts = List.of();
    }

    /** What is to be said now, a moment after this was asked first; it is given once. */
    Optional<List<String>> due(boolean someoneSpeaks, long now) {
        long begun = since.orElse(now);
        since = OptionalLong.of(begun);
        if (texts.isEmpty() || someoneSpeaks || now - begun < MOMENT.toNanos()) {
            return Optional.empty();
        }
        List<String> first = texts;
        drop();
        return Optional.of(first);
    }
}
