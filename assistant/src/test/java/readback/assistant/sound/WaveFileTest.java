package readback.assistant.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files are written and read by the Java platform's own sound library as the independent side. */
class WaveFileTest {
    @TempDir
    Path folder;

    private static final int STEPS = 100;

    /** A ramp from silence to nearly full scale in the given format, as the platform's library stores it. */
    private Path ramp(String name, int rate, int bits, int channels) throws IOException {
        AudioFormat format = new AudioFormat(rate, bits, channels, bits > 8, false);
        int bytes = bits / 8;
        byte[] pcm = new byte[STEPS * channels * bytes];
        for (int frame = 0; frame < STEPS; frame++) {
            for (int channel = 0; channel < channels; channel++) {
                double value = (double) frame / STEPS * (channel == 0 ? 1 : 0.5);
                long sample = Math.round(value * (1L << (bits - 1))) + (bits == 8 ? 128 : 0);
                for (int b = 0; b < bytes; b++) {
                    pcm[(frame * channels + channel) * bytes + b] = (byte) (sample >> (8 * b));
                }
            }
        }
        Path file = folder.resolve(name);
        try (AudioInputStream in = new AudioInputStream(new ByteArrayInputStream(pcm), format, STEPS)) {
            AudioSystem.write(in, AudioFileFormat.Type.WAVE, file.toFile());
        }
        return file;
    }

    @ParameterizedTest
    @CsvSource({
        "8000,8,1",
        "8000,8,2",
        "16000,16,1",
        "16000,16,2",
        "44100,16,2",
        "48000,24,1",
        "48000,24,2",
        "22050,8,1"
    })
    void everyFormatInUseIsRead(int rate, int bits, int channels) throws IOException {
        Recording recording = Recording.read(ramp("ramp.wav", rate, bits, channels));

        assertThat(recording.problem()).isEmpty();
        Samples samples = recording.samples().orElseThrow();
        assertThat(samples.rate()).isEqualTo(rate);
        assertThat(samples.length()).isEqualTo(STEPS);
        double tolerance = bits == 8 ? 256 : 1;
        for (int i = 0; i < STEPS; i++) {
            double truth = (double) i / STEPS * (channels == 2 ? 0.75 : 1) * 32768;
            assertThat((double) samples.pcm()[i]).isCloseTo(truth, within(tolerance));
        }
    }

    @Test
    void whatIsWrittenIsReadBackByThePlatform() throws IOException, UnsupportedAudioFileException {
        Path file = folder.resolve("out.wav");
        short[] pcm = {0, 1, -1, Short.MAX_VALUE, Short.MIN_VALUE, 1234};
        try (WaveWriter writer = WaveWriter.create(file, 16000)) {
            writer.append(Samples.of(Arrays.copyOf(pcm, 3), 16000));
            writer.append(Samples.of(Arrays.copyOfRange(pcm, 3, 6), 16000));
        }

        try (AudioInputStream in = AudioSystem.getAudioInputStream(file.toFile())) {
            assertThat(in.getFormat().getSampleRate()).isEqualTo(16000f);
            assertThat(in.getFormat().getChannels()).isEqualTo(1);
            short[] read = new short[pcm.length];
            ByteBuffer.wrap(in.readAllBytes())
                    .order(ByteOrder.LITTLE_ENDIAN)
                    .asShortBuffer()
                    .get(read);
            assertThat(read).isEqualTo(pcm);
        }
    }

    @Test
    void theFileIsWholeAfterEveryPart() throws IOException {
        Path file = folder.resolve("growing.wav");
        try (WaveWriter writer = WaveWriter.create(file, 16000)) {
            writer.append(Samples.silence(0.5, 48000));

            Recording sofar = Recording.read(file);
            assertThat(sofar.problem()).isEmpty();
            assertThat(sofar.samples().orElseThrow().seconds()).isCloseTo(0.5, within(0.001));
        }
    }

    @Test
    void aLengthThatWasNeverFilledInReachesToTheEnd() throws IOException {
        byte[] bytes = Files.readAllBytes(ramp("pipe.wav", 16000, 16, 1));
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).putInt(40, 0xFFFFFFFF);
        Path file = Files.write(folder.resolve("piped.wav"), bytes);

        assertThat(Recording.read(file)).isInstanceOf(Recording.Whole.class);
        assertThat(Recording.read(file).samples().orElseThrow().length()).isEqualTo(100);
    }

    @Test
    void otherChunksArePassedOver() throws IOException {
        byte[] bytes = Files.readAllBytes(ramp("plain.wav", 16000, 16, 1));
        byte[] list = new byte[8 + 4];
        System.arraycopy("LIST".getBytes(StandardCharsets.US_ASCII), 0, list, 0, 4);
        list[4] = 3; // odd sizes are padded to even
        ByteBuffer all = ByteBuffer.allocate(bytes.length + list.length);
        all.put(bytes, 0, 36).put(list).put(bytes, 36, bytes.length - 36);
        Path file = Files.write(folder.resolve("listed.wav"), all.array());

        assertThat(Recording.read(file).samples())
                .isEqualTo(Recording.read(folder.resolve("plain.wav")).samples());
    }

    @Test
    void ofATruncatedFileTheBeginningIsUsedAndTheLossIsSaid() throws IOException {
        byte[] bytes = Files.readAllBytes(ramp("long.wav", 16000, 16, 1));
        Path file = Files.write(folder.resolve("cut.wav"), Arrays.copyOf(bytes, 44 + 101));

        Recording recording = Recording.read(file);

        assertThat(recording.samples().orElseThrow().length()).isEqualTo(50);
        assertThat(recording.problem().orElseThrow()).contains("cut.wav").contains("cut off");
    }

    @Test
    void eachUnusableFileIsSaidInOneSentence() throws IOException {
        Path empty = Files.createFile(folder.resolve("empty.wav"));
        Path text = Files.writeString(folder.resolve("text.wav"), "suction one one eight, and so on");
        Path flac = Files.writeString(folder.resolve("call.flac"), "fLaC and what follows it");
        Path header = Files.write(
                folder.resolve("header.wav"), Arrays.copyOf(Files.readAllBytes(ramp("r.wav", 16000, 16, 1)), 44));
        byte[] floating = Files.readAllBytes(ramp("f.wav", 16000, 16, 1));
        floating[20] = 3;
        Path floats = Files.write(folder.resolve("floats.wav"), floating);

        assertThat(unreadable(folder.resolve("nowhere.wav")))
                .contains("no file")
                .contains("nowhere.wav");
        assertThat(unreadable(folder)).contains("folder");
        assertThat(unreadable(empty)).contains("empty");
        assertThat(unreadable(text)).contains("not an audio file").contains("WAV");
        assertThat(unreadable(flac)).contains("FLAC").contains("WAV");
        assertThat(unreadable(header)).contains("no sound");
        assertThat(unreadable(floats)).contains("floating-point");
    }

    private static String unreadable(Path file) {
        assertThat(Recording.read(file)).isInstanceOf(Recording.Unreadable.class);
        return Recording.read(file).problem().orElseThrow();
    }
}
