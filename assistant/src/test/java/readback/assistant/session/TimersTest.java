package readback.assistant.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TimersTest {
    private static final Instant NOON = Instant.parse("2026-07-01T12:00:00Z");
    private final Timers timers = new Timers();

    @Test
    void timersRunOutInTheirOrderAndOnce() {
        timers.start("rest", NOON, Duration.ofMinutes(15));
        timers.start("reminder", NOON, Duration.ofMinutes(5));

        assertThat(timers.elapsed(NOON.plusSeconds(299))).isEmpty();
        assertThat(timers.elapsed(NOON.plusSeconds(1000))).containsExactly("reminder", "rest");
        assertThat(timers.elapsed(NOON.plusSeconds(2000))).isEmpty();
    }

    @Test
    void aTimerStartedAgainRunsFromThen() {
        timers.start("rest", NOON, Duration.ofMinutes(1));
        timers.start("rest", NOON.plusSeconds(30), Duration.ofMinutes(1));

        assertThat(timers.left(NOON.plusSeconds(60))).isEqualTo(Map.of("rest", Duration.ofSeconds(30)));
    }

    @Test
    void aStoppedTimerIsForgotten() {
        timers.start("rest", NOON, Duration.ofMinutes(1));
        timers.stop("rest");

        assertThat(timers.elapsed(NOON.plusSeconds(100))).isEmpty();
    }
}
