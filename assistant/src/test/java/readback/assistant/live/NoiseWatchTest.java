package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class NoiseWatchTest {
    private static final Instant NOON = Instant.parse("2026-07-01T12:00:00Z");
    private final NoiseWatch watch = new NoiseWatch();

    @Test
    void oneLoudMomentIsNoLoudRoom() {
        assertThat(watch.heard(6, NOON)).isFalse();
        assertThat(watch.heard(20, NOON)).isFalse();
        assertThat(watch.loud()).isFalse();
    }

    @Test
    void aLoudRoomIsSaidOnceInTwoMinutesAndShownAllTheTime() {
        watch.heard(6, NOON);

        assertThat(watch.heard(6, NOON)).isTrue();
        assertThat(watch.heard(6, NOON.plusSeconds(60))).isFalse();
        assertThat(watch.loud()).isTrue();
        assertThat(watch.heard(6, NOON.plusSeconds(121))).isTrue();
    }

    @Test
    void itIsOverWhenSpeechStandsClearlyOut() {
        watch.heard(6, NOON);
        watch.heard(6, NOON);

        watch.heard(11, NOON);
        assertThat(watch.loud()).isTrue();
        watch.heard(14, NOON);
        assertThat(watch.loud()).isFalse();
    }
}
