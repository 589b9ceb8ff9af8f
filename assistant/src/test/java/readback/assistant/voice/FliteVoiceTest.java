package readback.assistant.voice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.sound.Samples;
import readback.assistant.sound.WaveWriter;

/** Against programs that take flite's arguments, so that the test needs none installed. */
class FliteVoiceTest {
    @TempDir
    Path folder;

    private String program(String body) throws IOException {
        Path script = folder.resolve("flite");
        Files.writeString(script, "#!/bin/sh\n" + body + "\n");
        Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwxr-xr-x"));
        return script.toString();
    }

    @Test
    void theProgramIsGivenTheWordsAndItsSoundComesBack() throws IOException, VoiceFailedException {
        Path sound = folder.resolve("made.wav");
        WaveWriter.write(sound, Samples.silence(1.5, 16000));
        Path words = folder.resolve("words-seen");
        // Arguments: -voice rms -f WORDS -o SOUND
        String program = program("cat \"$4\" > '" + words + "' && cp '" + sound + "' \"$6\"");

        try (Voice voice = FliteVoice.open(program)) {
            assertThat(voice.speak("suction, one one eight").seconds()).isEqualTo(1.5);
            assertThat(words).hasContent("suction, one one eight");
            assertThat(voice.speak(" ").length()).isZero();
        }
    }

    @Test
    void aProgramThatIsNotInstalledIsSaidInOneSentence() {
        assertThatThrownBy(() -> FliteVoice.open(folder.resolve("nowhere").toString()))
                .isInstanceOf(VoiceFailedException.class)
                .hasMessageContaining("install it")
                .hasMessageContaining("--voice");
    }

    @Test
    void aProgramThatFailsIsSaidInOneSentence() throws IOException {
        String program = program("exit 3");

        assertThatThrownBy(() -> FliteVoice.open(program))
                .isInstanceOf(VoiceFailedException.class)
                .hasMessageContaining("failed to speak");
    }
}
