package readback.assistant.voice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;

class SpokenConversationTest {
    @TempDir
    Path folder;

    private static Samples constant(int value, double seconds) {
        short[] pcm = new short[(int) (seconds * 16000)];
        Arrays.fill(pcm, (short) value);
        return Samples.of(pcm, 16000);
    }

    @Test
    void whatWasSaidStandsInItsOrderWithTheOtherSidesTimeBetween() throws IOException {
        Path file = folder.resolve("spoken.wav");
        try (SpokenConversation conversation = SpokenConversation.in(file)) {
            conversation.say(constant(100, 1));
            conversation.listen(2);
            conversation.say(constant(200, 1));
            conversation.say(constant(300, 1));
            assertThat(conversation.seconds()).isCloseTo(5.25, within(0.001));
        }

        short[] pcm = Recording.read(file).samples().orElseThrow().pcm();
        assertThat(at(pcm, 0.5)).isEqualTo(100);
        assertThat(at(pcm, 2.0)).isZero();
        assertThat(at(pcm, 3.5)).isEqualTo(200);
        assertThat(at(pcm, 4.1)).isZero();
        assertThat(at(pcm, 4.5)).isEqualTo(300);
    }

    private static int at(short[] pcm, double seconds) {
        return pcm[(int) (seconds * 16000)];
    }
}
