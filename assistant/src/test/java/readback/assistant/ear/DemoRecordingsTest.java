package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;

/** The shipped recordings through the real recogniser, with phrases that are not made from their scripts. */
class DemoRecordingsTest {
    private VoskEar ear;

    @BeforeEach
    void open() throws EarUnavailableException {
        ear = BundledEar.open();
    }

    @AfterEach
    void close() {
        ear.close();
    }

    private List<String> heard(Samples sound) {
        AudioFileFeed feed = new AudioFileFeed(ear, sound);
        List<String> lines = new ArrayList<>();
        while (!feed.ended()) {
            feed.next(StepPhrasesForTests.ALL).ifPresent(utterance -> lines.add(utterance.words()));
        }
        return lines;
    }

    @ParameterizedTest
    @ValueSource(strings = {"piston", "valve"})
    void everyLineOfTheCallIsHeardAsItsScriptSays(String call) {
        assertThat(heard(SpokenLines.sound(call))).isEqualTo(SpokenLines.of(call));
    }

    @Test
    void theSameCallAtFortyEightKilohertzIsHeardAlike() {
        assertThat(heard(SpokenLines.sound("piston").at(48000))).isEqualTo(SpokenLines.of("piston"));
    }

    @Test
    void ofATruncatedCallTheReadablePartIsHeard() {
        byte[] whole = SpokenLines.bytes("piston.wav");
        byte[] half = Arrays.copyOf(whole, whole.length / 2);

        Recording recording = Recording.read("half of the call", new ByteArrayInputStream(half));

        assertThat(recording.problem().orElseThrow()).contains("cut off");
        assertThat(heard(recording.samples().orElseThrow()).subList(0, 5))
                .isEqualTo(SpokenLines.of("piston").subList(0, 5));
    }
}
