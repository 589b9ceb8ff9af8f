package readback.assistant.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.jline.utils.ScreenTerminal;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.assistant.ear.Ear;
import readback.assistant.ear.EarUnavailableException;
import readback.assistant.ear.ScriptedEar;
import readback.assistant.echo.EchoCanceller;
import readback.assistant.microphone.Microphone;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.microphone.MicrophoneLostException;
import readback.assistant.screen.Layout;
import readback.assistant.screen.Palette;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.StrokeReader;
import readback.assistant.screen.TerminalFace;
import readback.assistant.sound.Samples;
import readback.assistant.sound.Tone;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.Voice;
import readback.grammar.Grammar;
import readback.prompts.text.Language;

/** Setting up on a virtual terminal with keys and touches, a microphone that gives what the test wants, and a voice. */
class SetupRunTest {

    private static final int CHUNK = Microphone.RATE / 50;

    /** Quiet, as loud as a good room. */
    private static final short[] QUIET = chunk(20);

    private final BlockingQueue<short[]> sound = new LinkedBlockingQueue<>();
    private final BlockingQueue<String> said = new LinkedBlockingQueue<>();
    private final BlockingQueue<Map<Name, String>> written = new LinkedBlockingQueue<>();
    private LineDisciplineTerminal terminal;
    private ScreenTerminal screen;
    private TerminalFace face;
    private StrokeReader strokes;
    private SetupRun run;
    private Optional<String> deaf = Optional.empty();
    private volatile boolean pulled;

    /** Whether the microphone waits for what the test gives, so that no time passes meanwhile. */
    private volatile boolean waits = true;

    private CompletableFuture<Choice> over = CompletableFuture.completedFuture(Choice.LEAVE);

    private static short[] chunk(int amplitude) {
        short[] chunk = new short[CHUNK];
        for (int i = 0; i < CHUNK; i++) {
            chunk[i] = (short) (i % 2 == 0 ? amplitude : -amplitude);
        }
        return chunk;
    }

    @BeforeEach
    void open() throws Exception {
        open(80, 24);
    }

    private void open(int columns, int rows) throws Exception {
        ScreenTerminal.VirtualTerminal virtual = ScreenTerminal.withTerminal("test", "screen-256color", columns, rows);
        terminal = virtual.terminal();
        screen = virtual.screen();
        ScreenTexts texts = ScreenTexts.ofSetup(Language.english());
        face = new TerminalFace(terminal, new Layout(Palette.DAY, texts, true), texts);
        run = new SetupRun(
                Grammar.standard(),
                Language.english(),
                new Simulated(),
                settings -> {
                    written.add(settings);
                    return new SetupRun.Stored(Optional.empty(), Optional.empty());
                },
                face);
        strokes = new StrokeReader(terminal, run::strike, run::end);
        strokes.start();
    }

    @AfterEach
    void close() throws Exception {
        run.end();
        over.get(20, TimeUnit.SECONDS);
        strokes.close();
        face.close();
        terminal.close();
    }

    private void begin() {
        Situation situation = new Situation(
                List.of("built in"), List.of("jack"), "/home/ann/settings", false, Optional.empty(), Map.of());
        over = CompletableFuture.supplyAsync(() -> run.run(situation, Beginning.WELCOME));
    }

    private void keys(String keys) throws Exception {
        for (byte each : keys.getBytes(StandardCharsets.US_ASCII)) {
            terminal.processInputByte(each);
        }
    }

    private String[] rows() {
        return screen.toString().lines().toArray(String[]::new);
    }

    private String seen() {
        return String.join(" ", rows()).replaceAll("\\s+", " ");
    }

    private void await(String text) throws InterruptedException {
        await(() -> seen().contains(text), text);
    }

    private void awaitListening() throws InterruptedException {
        await(() -> seen().contains(" LISTENING") && !seen().contains("NOT LISTENING"), "LISTENING");
    }

    private void await(BooleanSupplier there, String what) throws InterruptedException {
        for (int i = 0; i < 3000; i++) {
            if (there.getAsBoolean()) {
                return;
            }
            TimeUnit.MILLISECONDS.sleep(20);
        }
        throw new AssertionError("'" + what + "' is not on the screen:\n" + screen);
    }

    /** Touches the first field with this text, as xterm reports it: pressed and let go. */
    private void touch(String label) throws Exception {
        await(() -> Stream.of(rows()).anyMatch(row -> row.contains("[ ") && row.contains(label)), label);
        String[] rows = rows();
        for (int row = 0; row < rows.length; row++) {
            int column = rows[row].contains("[ ") ? rows[row].indexOf(label) : -1;
            if (column >= 0) {
                String place = String.valueOf((char) (33 + column)) + (char) (33 + row);
                keys("\u001b[M " + place + "\u001b[M#" + place);
                return;
            }
        }
        throw new AssertionError("'" + label + "' is not on the screen:\n" + screen);
    }

    /** Half a second of speech at this amplitude, and the silence after it. */
    private void speak(int amplitude) {
        for (int i = 0; i < 25; i++) {
            sound.add(chunk(amplitude));
        }
        for (int i = 0; i < 40; i++) {
            sound.add(QUIET);
        }
    }

    @Test
    void the_first_run_leads_by_touch_key_and_voice_to_a_written_file() throws Exception {
        begin();
        await("Welcome to Readback.");
        touch("1  SET UP");
        await("Which microphone?");
        keys("1\r");
        awaitListening();
        speak(6000);
        await("\"one two three\" was understood.");
        await("good.");
        awaitListening();
        speak(6000); // "next"
        await("Which loudspeaker?");
        keys("jack\r");
        await("Did you hear the test sentence?");
        assertThat(said.take()).contains("Can you hear me?");
        waits = false;
        keys("\u001bOQ"); // F2 is yes
        await("The noise here is at -64 dB");
        assertThat(seen()).contains("readings are heard well");
        touch("NEXT");
        await("Is it a headset?");
        keys("no\r");
        await("Which units");
        touch("psi and");
        await("How high above sea level");
        keys("sea level\r");
        await("Altitude 0 ft: is that right?");
        touch("YES");
        await("How good are your instruments?");
        touch("NEXT");
        await("Write these settings");
        touch("YES: WRITE");
        await("Written.");

        assertThat(written.take())
                .containsOnly(
                        Map.entry(Name.MICROPHONE, "built in"),
                        Map.entry(Name.LOUDSPEAKER, "jack"),
                        Map.entry(Name.HEADSET, "false"),
                        Map.entry(Name.UNITS, "us"),
                        Map.entry(Name.ALTITUDE, "0"));
        keys("3\r");
        assertThat(over.get(20, TimeUnit.SECONDS)).isEqualTo(Choice.PRACTICE);
    }

    @Test
    void the_level_is_followed_while_somebody_is_to_speak() throws Exception {
        begin();
        keys("1\r1\r");
        awaitListening();
        for (int i = 0; i < 300; i++) {
            sound.add(chunk(6000));
        }
        await("GOOD");
        await("■■■■");
    }

    @Test
    void without_a_recogniser_the_level_is_tested_alone() throws Exception {
        deaf = Optional.of("There is no recogniser for this processor.");
        begin();
        keys("1\r1\r");
        await("QUIET");
        await(
                () -> {
                    // nothing shows when it begins to be tested
                    speak(6000);
                    return seen().contains("There is no recogniser for this processor.");
                },
                "There is no recogniser");
        assertThat(seen()).contains("good.");
    }

    @Test
    void a_microphone_that_is_pulled_out_is_told_at_once() throws Exception {
        begin();
        keys("1\r1\r");
        await("QUIET");
        pulled = true;
        await("gives no sound any more");
        await("Which microphone?");
    }

    @Test
    void control_c_leaves_at_once() throws Exception {
        begin();
        await("Welcome");
        keys("\u0003");

        assertThat(over.get(20, TimeUnit.SECONDS)).isEqualTo(Choice.LEAVE);
        assertThat(written).isEmpty();
    }

    /** Everything that can be chosen stands there, on the smallest screens too. */
    @ParameterizedTest
    @CsvSource({"80, 24", "60, 14", "50, 20"})
    void the_menu_fits_the_screen(int columns, int rows) throws Exception {
        close();
        open(columns, rows);
        begin();
        await(() -> seen().contains("6 LEAVE") || seen().contains("MORE"), "6 LEAVE or MORE");
        assertThat(seen()).contains("1 SET UP");
        if (!seen().contains("6 LEAVE")) {
            touch("MORE");
        }
        await("6 LEAVE");
    }

    /** What the tests give and take. */
    private final class Simulated implements SetupRun.Devices {
        @Override
        public MicrophoneFinder.Socket microphone(String name) {
            return () -> {
                if (pulled) {
                    throw new MicrophoneLostException("The microphone 'built in' gives no sound any more.");
                }
                return new Given();
            };
        }

        @Override
        public Loudspeaker loudspeaker(String name) {
            return new Noted();
        }

        @Override
        public Voice voice() {
            return new Toning();
        }

        @Override
        public Ear ear() throws EarUnavailableException {
            if (deaf.isPresent()) {
                throw new EarUnavailableException(deaf.get());
            }
            return new ScriptedEar(List.of("one two three", "next"), List.of("one", "two", "three", "next"));
        }

        @Override
        public EchoCanceller canceller() {
            return new EchoCanceller() {
                @Override
                public short[] cancel(short[] heard, short[] played) {
                    return heard;
                }

                @Override
                public void close() {
                    // nothing is held
                }
            };
        }
    }

    /** Quiet where nothing was given, ten times as fast as life. */
    private final class Given implements Microphone {
        @Override
        public String name() {
            return "built in";
        }

        @Override
        public short[] read() throws MicrophoneLostException {
            try {
                short[] next = null;
                while (next == null) {
                    if (pulled) {
                        throw new MicrophoneLostException("The microphone 'built in' gives no sound any more.");
                    }
                    next = sound.poll(2, TimeUnit.MILLISECONDS);
                    next = next == null && !waits ? QUIET : next;
                }
                return next;
            } catch (InterruptedException e) {
                throw new MicrophoneLostException("The test is over.", e);
            }
        }

        @Override
        public long overruns() {
            return 0;
        }

        @Override
        public void close() {
            // nothing is held
        }
    }

    private final class Toning implements Voice {
        @Override
        public String name() {
            return "tone";
        }

        @Override
        public Samples speak(String text) {
            said.add(text);
            return Tone.of(440, 3, Microphone.RATE);
        }

        @Override
        public void close() {
            // nothing is held
        }
    }

    /** Takes a fiftieth of the time that sound takes, as the microphone does. */
    private static final class Noted implements Loudspeaker {
        @Override
        public String name() {
            return "jack";
        }

        @Override
        public void play(Samples played, BooleanSupplier stop) {
            try {
                TimeUnit.MILLISECONDS.sleep(Math.round(1000 * played.seconds() / 50));
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public void close() {
            // nothing is held
        }
    }
}
