package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import readback.assistant.ear.Ear;

class AudioBufferTest {
    private static final int TENTH = Ear.RATE / 10;
    private final AudioBuffer memory = new AudioBuffer(10 * TENTH);

    /** Tenths of a second, each filled with its own number. */
    private void hear(int from, int to) {
        for (int tenth = from; tenth <= to; tenth++) {
            short[] chunk = new short[TENTH];
            java.util.Arrays.fill(chunk, (short) tenth);
            memory.add(chunk);
        }
    }

    @Test
    void theSoundBetweenTwoMomentsCanBeHadBack() {
        hear(1, 8);

        assertThat(memory.stretch(0.5, 0.3).pcm())
                .hasSize(2 * TENTH)
                .startsWith(4)
                .endsWith(5);
    }

    @Test
    void whatIsNotThereAnyMoreOrNotYetIsLeftOut() {
        hear(1, 15);

        assertThat(memory.stretch(2, 0.9).pcm()).hasSize(TENTH).containsOnly(6);
        assertThat(memory.stretch(0.1, -0.2).pcm()).hasSize(TENTH).containsOnly(15);
    }
}
