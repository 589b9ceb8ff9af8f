package readback.assistant.echo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import readback.assistant.ear.Ear;

/** When listening over the own voice is given up. */
class EchoReturnTest {

    private static final int CHUNK = Ear.RATE / 50;

    private final EchoReturn echo = new EchoReturn();

    private void voice(double seconds, int heard, int left, boolean open) {
        for (int i = 0; i < seconds * 50; i++) {
            echo.hear(level(8000), level(heard), level(left), open);
        }
    }

    private static short[] level(int value) {
        short[] chunk = new short[CHUNK];
        Arrays.fill(chunk, (short) value);
        return chunk;
    }

    @Test
    void a_voice_that_stays_loud_is_hopeless() {
        voice(12, 4000, 3000, true);
        assertThat(echo.hopeless()).isTrue();
    }

    @Test
    void a_loud_second_while_the_canceller_adapts_is_none() {
        voice(2.5, 4000, 3000, true);
        voice(12, 4000, 40, false);
        assertThat(echo.hopeless()).isFalse();
    }

    @Test
    void someone_who_talks_for_a_few_seconds_is_none() {
        voice(6, 4000, 40, false);
        voice(3, 5000, 3000, true);
        voice(6, 4000, 40, false);
        assertThat(echo.hopeless()).isFalse();
    }

    @Test
    void a_fan_that_drowns_the_echo_is_none() {
        voice(20, 4000, 4000, false);
        assertThat(echo.hopeless()).isFalse();
    }

    @Test
    void sound_without_the_own_voice_tells_nothing() {
        for (int i = 0; i < 1000; i++) {
            echo.hear(level(0), level(4000), level(4000), true);
        }
        assertThat(echo.hopeless()).isFalse();
    }
}
