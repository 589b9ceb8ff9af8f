package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NoInputTimerTest {
    private static final Instant NOON = Instant.parse("2026-07-01T12:00:00Z");
    private final NoInputTimer timer = new NoInputTimer();

    @Test
    void itIsOverAfterItsTimeAndBeginsAgain() {
        timer.restart(Optional.of(Duration.ofMinutes(3)));

        assertThat(timer.over(true, NOON)).isFalse();
        assertThat(timer.over(true, NOON.plusSeconds(179))).isFalse();
        assertThat(timer.over(true, NOON.plusSeconds(180))).isTrue();
        assertThat(timer.over(true, NOON.plusSeconds(181))).isFalse();
    }

    @Test
    void speechAndTheVoiceItselfRestartIt() {
        timer.restart(Optional.of(Duration.ofMinutes(3)));
        timer.over(true, NOON);

        timer.over(false, NOON.plusSeconds(100));

        assertThat(timer.over(true, NOON.plusSeconds(190))).isFalse();
        assertThat(timer.over(true, NOON.plusSeconds(370))).isTrue();
    }

    @Test
    void withoutATimeItIsNeverOver() {
        timer.restart(Optional.empty());
        timer.over(true, NOON);

        assertThat(timer.over(true, NOON.plus(Duration.ofDays(1)))).isFalse();
    }
}
