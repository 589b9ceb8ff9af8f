package readback.assistant.dialogue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** How long silence is borne, and after how long someone was away. */
final class NoInputTimeout {

    /** Before the question is asked again, and then before it is told where the work stands; decision 0001. */
    private static final List<Duration> LASTS = List.of(Duration.ofMinutes(3), Duration.ofMinutes(10));

    /** Whoever was away for so long is told where the work stands. */
    private static final Duration AWAY = Duration.ofMinutes(10);

    private NoInputTimeout() {}

    /** What is left of it; empty where silence is as good as words: nobody is hurried who said "hold on" or waits. */
    static Optional<Duration> of(State state) {
        int silences = state.conversation().silences();
        return state.held() || !state.waits().isEmpty() || silences >= LASTS.size()
                ? Optional.empty()
                : Optional.of(LASTS.get(silences));
    }

    /** Whether nothing happened for long before now, and not because time had to pass. */
    static boolean away(State before, Instant now) {
        return before.waits().isEmpty() && Duration.between(before.at(), now).compareTo(AWAY) >= 0;
    }
}
