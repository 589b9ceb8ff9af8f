package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NoInputTimerTest {
    private static final Instant NOON = Instant.parse("2026-07-01T12:00:00Z");
    private final NoInputTimer silence = new NoInputTimer();

    @Test
    void itIsTooLongWhenPatienceIsOverAndBeginsAnew() {
        silence.bear(Optional.of(Duration.ofMinutes(3)));

        assertThat(silence.tooLong(true, NOON)).isFalse();
        assertThat(silence.tooLong(true, NOON.plusSeconds(179))).isFalse();
        assertThat(silence.tooLong(true, NOON.plusSeconds(180))).isTrue();
        assertThat(silence.tooLong(true, NOON.plusSeconds(181))).isFalse();
    }

    @Test
    void speechAndTheVoiceItselfBreakIt() {
        silence.bear(Optional.of(Duration.ofMinutes(3)));
        silence.tooLong(true, NOON);

        silence.tooLong(false, NOON.plusSeconds(100));

        assertThat(silence.tooLong(true, NOON.plusSeconds(190))).isFalse();
        assertThat(silence.tooLong(true, NOON.plusSeconds(370))).isTrue();
    }

    @Test
    void withoutAPatienceItNeverIs() {
        silence.bear(Optional.empty());
        silence.tooLong(true, NOON);

        assertThat(silence.tooLong(true, NOON.plus(Duration.ofDays(1)))).isFalse();
    }
}
