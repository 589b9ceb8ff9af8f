package readback.assistant.selfcheck;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.ear.EarUnavailableException;
import readback.assistant.ear.ScriptedEar;
import readback.assistant.microphone.Microphone;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.microphone.MicrophoneLostException;
import readback.assistant.sound.Samples;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.LoudspeakerLostException;
import readback.assistant.voice.Voice;

class SelfCheckTest {
    @TempDir
    Path folder;

    private static MicrophoneFinder.Socket microphone(double amplitude) {
        return () -> new Microphone() {
            @Override
            public String name() {
                return "test";
            }

            @Override
            public short[] read() {
                short[] chunk = new short[RATE / 10];
                Arrays.fill(chunk, (short) (amplitude * 32767));
                return chunk;
            }

            @Override
            public long overruns() {
                return 0;
            }

            @Override
            public void close() {}
        };
    }

    private static final class Speaking implements Voice, Loudspeaker {
        @Override
        public String name() {
            return "speaking";
        }

        @Override
        public Samples speak(String text) {
            return Samples.silence(1, 16000);
        }

        @Override
        public void play(Samples sound, BooleanSupplier stop) throws LoudspeakerLostException {}

        @Override
        public void close() {}
    }

    private List<CheckResult> run(MicrophoneFinder.Socket microphone, SelfCheck.EarSource ear, Path sessions) {
        Speaking speaking = new Speaking();
        return new SelfCheck(new SelfCheck.Equipment(ear, microphone, speaking, speaking, sessions)).run(finding -> {});
    }

    private static CheckResult of(List<CheckResult> findings, String subject) {
        return findings.stream()
                .filter(finding -> finding.subject().equals(subject))
                .findFirst()
                .orElseThrow();
    }

    private static ScriptedEar ear() {
        return new ScriptedEar(List.of(), List.of());
    }

    @Test
    void aQuietMicrophoneInAQuietRoomIsGood() {
        CheckResult finding = of(run(microphone(0.001), SelfCheckTest::ear, folder), "microphone");

        assertThat(finding.grade()).isEqualTo(CheckResult.Grade.GOOD);
        assertThat(finding.what()).contains("noise -60 dB");
    }

    @Test
    void aMutedMicrophoneIsDoubtful() {
        CheckResult finding = of(run(microphone(0), SelfCheckTest::ear, folder), "microphone");

        assertThat(finding.grade()).isEqualTo(CheckResult.Grade.DOUBTFUL);
        assertThat(finding.todo()).contains("muted");
    }

    @Test
    void aLoudRoomIsDoubtful() {
        CheckResult finding = of(run(microphone(0.1), SelfCheckTest::ear, folder), "microphone");

        assertThat(finding.grade()).isEqualTo(CheckResult.Grade.DOUBTFUL);
        assertThat(finding.todo()).contains("headset");
    }

    @Test
    void noMicrophoneIsBadAndTheOtherChecksGoOn() {
        List<CheckResult> findings = run(
                () -> {
                    throw new MicrophoneLostException("There is no microphone.");
                },
                SelfCheckTest::ear,
                folder);

        assertThat(of(findings, "microphone").grade()).isEqualTo(CheckResult.Grade.BAD);
        assertThat(of(findings, "session folder").grade()).isEqualTo(CheckResult.Grade.GOOD);
    }

    @Test
    void aModelThatCannotBeLoadedIsBadWithTheReason() {
        List<CheckResult> findings = run(
                microphone(0.001),
                () -> {
                    throw new EarUnavailableException("The speech model is damaged.", new IOException("torn"));
                },
                folder);

        assertThat(of(findings, "recogniser").grade()).isEqualTo(CheckResult.Grade.BAD);
        assertThat(of(findings, "recogniser").what()).isEqualTo("The speech model is damaged.");
    }

    @Test
    void aSessionFolderThatIsAFileIsBad() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));

        assertThat(of(run(microphone(0.001), SelfCheckTest::ear, file), "session folder")
                        .grade())
                .isEqualTo(CheckResult.Grade.BAD);
    }
}
