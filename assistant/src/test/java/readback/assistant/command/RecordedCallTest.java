package readback.assistant.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;
import readback.assistant.sound.WaveWriter;

/** The shipped recordings through the real recogniser, the dialogue and the judgement to the verdict. */
@Tag("slow")
class RecordedCallTest {

    @TempDir
    Path folder;

    private static List<String> technician(Ran ran) {
        return ran.out()
                .lines()
                .filter(line -> line.startsWith("technician"))
                .map(line -> line.substring("technician".length()).strip())
                .toList();
    }

    private Ran run(String... arguments) {
        List<String> all = new ArrayList<>(Arrays.asList(arguments));
        all.addAll(List.of(
                "--json",
                "--altitude-ft",
                "0",
                "--sessions",
                folder.resolve("sessions").toString()));
        return Ran.of("", all.toArray(String[]::new));
    }

    private static byte[] call(String name) throws IOException {
        try (InputStream in = RecordedCallTest.class.getResourceAsStream("/readback/assistant/demo/" + name)) {
            return Objects.requireNonNull(in, name).readAllBytes();
        }
    }

    private static List<String> script(String name) throws IOException {
        return new String(call(name), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.substring(line.indexOf('|') + 1).strip())
                .toList();
    }

    @Test
    void the_piston_call_is_heard_word_for_word_and_judged_undercharged() throws IOException {
        Ran ran = run("demo", "piston");

        assertThat(technician(ran)).isEqualTo(script("piston.txt"));
        assertThat(ran.lastLine().path("verdict").asText()).isEqualTo("add");
        assertThat(ran.lastLine().path("readings").path("suctionPressure").asInt())
                .isEqualTo(110);
        assertThat(ran.lastLine().path("complete").asBoolean()).isTrue();
    }

    @Test
    void the_valve_call_is_heard_word_for_word_and_judged_right() throws IOException {
        Ran ran = run("demo", "valve");

        assertThat(technician(ran)).isEqualTo(script("valve.txt"));
        assertThat(ran.lastLine().path("verdict").asText()).isEqualTo("in-tolerance");
        assertThat(ran.lastLine().path("valve").asText()).isEqualTo("inside");
    }

    @Test
    void the_same_call_at_forty_eight_kilohertz_is_heard_alike() throws IOException {
        Path original = Files.write(folder.resolve("call.wav"), call("piston.wav"));
        Samples sound = Recording.read(original).samples().orElseThrow();
        Path wide = folder.resolve("wide.wav");
        try (WaveWriter writer = WaveWriter.create(wide, 48000)) {
            writer.append(sound.at(48000));
        }

        assertThat(technician(run("check", "--audio", wide.toString()))).isEqualTo(script("piston.txt"));
    }

    @Test
    void of_a_cut_off_call_everything_before_the_cut_is_kept() throws IOException {
        byte[] whole = call("piston.wav");
        Path half = Files.write(folder.resolve("half.wav"), Arrays.copyOf(whole, whole.length / 2));

        Ran ran = run("check", "--audio", half.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).contains("half.wav").contains("cut off");
        assertThat(technician(ran).subList(0, 5)).isEqualTo(script("piston.txt").subList(0, 5));
        assertThat(ran.lastLine().path("meteringDevice").asText()).isEqualTo("piston");
    }

    @Test
    void the_spoken_side_is_written_where_it_was_asked_for() throws IOException {
        Path spoken = folder.resolve("spoken.wav");

        Ran ran = run("demo", "piston", "--voice", "none", "--speak-to", spoken.toString());

        assertThat(ran.out()).contains("Spoken side: " + spoken);
        // as long as the technician spoke at least: about 50 of the 54 seconds
        assertThat(Recording.read(spoken).samples().orElseThrow().seconds()).isGreaterThan(48);
    }

    @Test
    void pure_noise_is_no_speech_and_changes_nothing() throws IOException {
        Random random = new Random(7);
        short[] noise = new short[16000 * 6];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (short) (random.nextGaussian() * 900);
        }
        Path file = folder.resolve("noise.wav");
        try (WaveWriter writer = WaveWriter.create(file, 16000)) {
            writer.append(Samples.of(noise, 16000));
        }

        Ran ran = run("check", "--audio", file.toString());

        assertThat(ran.lastLine().path("readings").fieldNames())
                .toIterable()
                .as("the altitude comes from the settings")
                .containsExactly("altitude");
        assertThat(ran.lastLine().path("refrigerant").isNull()).isTrue();
        assertThat(ran.err()).contains("no speech was heard");
    }
}
