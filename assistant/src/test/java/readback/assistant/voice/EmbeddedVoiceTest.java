package readback.assistant.voice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import readback.assistant.ear.Ear;
import readback.assistant.ear.HearingForTests;
import readback.assistant.sound.Samples;

/** The voice in the folder of the distribution, judged by the recogniser, which never learned from it. */
@Tag("slow")
class EmbeddedVoiceTest {
    private static final Path HOME = Path.of("target", "readback");

    private static Voice voice;

    @BeforeAll
    static void open() throws VoiceFailedException {
        voice = VoiceChoice.EMBEDDED.open(HOME);
    }

    @AfterAll
    static void close() {
        voice.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"suction line fifty two", "wet bulb sixty seven", "outdoor ninety five"})
    void whatItSaysIsUnderstood(String words) throws Exception {
        Samples spoken = voice.speak(words);

        assertThat(spoken.seconds()).isBetween(0.8, 4.0);
        assertThat(HearingForTests.words(Samples.joined(
                        List.of(Samples.silence(0.4, Ear.RATE), spoken, Samples.silence(0.6, Ear.RATE)), Ear.RATE)))
                .isEqualTo(words);
    }

    @Test
    void itsLibrariesStayOutOfTheProgram() {
        assertThatThrownBy(() -> Class.forName("marytts.LocalMaryInterface"))
                .isInstanceOf(ClassNotFoundException.class);
        assertThatThrownBy(() -> Class.forName("org.apache.logging.log4j.Logger"))
                .isInstanceOf(ClassNotFoundException.class);
    }

    @Test
    void itLeavesNoLogInTheWorkingFolder() {
        assertThat(Path.of("log")).doesNotExist();
    }

    @Test
    void theThreadsOwnClassLoaderIsLeftAsItWas() throws VoiceFailedException {
        ClassLoader before = Thread.currentThread().getContextClassLoader();

        voice.speak("ready");

        assertThat(Thread.currentThread().getContextClassLoader()).isSameAs(before);
    }

    @Test
    void aFolderWithoutTheVoiceIsSaidInOneSentence() {
        assertThatThrownBy(() -> VoiceChoice.EMBEDDED.open(Path.of("target", "nowhere")))
                .isInstanceOf(VoiceFailedException.class)
                .hasMessageContaining("install Readback again")
                .hasMessageContaining("--voice");
    }

    @Test
    void withoutAVoiceEverythingIsSilent() throws VoiceFailedException {
        try (Voice none = VoiceChoice.NONE.open(HOME)) {
            assertThat(none.speak("caution").length()).isZero();
            assertThat(none.name()).isEqualTo("none");
        }
    }
}
