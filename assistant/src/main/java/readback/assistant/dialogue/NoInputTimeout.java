package readback.assistant.dialogue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** After how long a silence the dialogue speaks up, and when it takes a technician to have been away. */
final class NoInputTimeout {

    /** Until the question is asked again, and then until the state of the work is told; decision 0001. */
    private static final List<Duration> TIMEOUTS = List.of(Duration.ofMinutes(3), Duration.ofMinutes(10));

    /** After so long without an event, a returning technician is told where the work stands. */
    private static final Duration AWAY = Duration.ofMinutes(10);

    private NoInputTimeout() {}

    /** The next timeout; empty after "hold on", while a step waits for time to pass, and when all have passed. */
    static Optional<Duration> of(State state) {
        int silences = state.conversation().silences();
        return state.held() || !state.waits().isEmpty() || silences >= TIMEOUTS.size()
                ? Optional.empty()
                : Optional.of(TIMEOUTS.get(silences));
    }

    /** Whether nothing happened for long before now, and not because time had to pass. */
    static boolean away(State before, Instant now) {
        return before.waits().isEmpty() && Duration.between(before.at(), now).compareTo(AWAY) >= 0;
    }
}
