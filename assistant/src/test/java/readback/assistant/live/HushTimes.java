package readback.assistant.live;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import readback.assistant.ear.Ear;
import readback.assistant.ear.SpokenLines;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.screen.Stroke;
import readback.assistant.sound.Samples;
import readback.assistant.sound.WaveWriter;
import readback.assistant.voice.LineLoudspeaker;
import readback.assistant.voice.VoiceChoice;

/**
 * How soon the voice begins and falls silent, measured where it sounds: {@code .ci/with-sound java ... HushTimes [VOICE
 * [TIMES]]}, flite and 20 times when nothing is said. Run from the folder assistant.
 *
 * <p>A whole live session with microphone, ear, dialogue and record. Beginning: from a typed question to the first
 * sound at the loudspeaker's monitor, with a phrase that is ready and with one that must be made. Falling silent: from
 * a key, and, with a headset, from the first sound of a technician at the microphone, to the last sound at the monitor.
 * Both monitors are read in pieces of 10 ms as they come, so every figure is late by that or a little more.
 */
public final class HushTimes {

    private static final double LIMIT_MILLIS = 30_000;

    private final int times;
    private final MeasuredSession session;
    private final Monitor loudspeaker;
    private final Monitor mouth;
    private final Path speech;

    private HushTimes(VoiceChoice voice, int times) throws Exception {
        this.times = times;
        this.loudspeaker = new Monitor("loudspeaker.monitor");
        this.mouth = new Monitor("mouth.monitor");
        this.speech = Files.createTempFile("speech", ".wav");
        Samples call = SpokenLines.sound("piston").at(Ear.RATE);
        WaveWriter.write(speech, Samples.of(call.slice(0, 2 * Ear.RATE), Ear.RATE));
        this.session = new MeasuredSession(
                Files.createTempDirectory("hush"),
                MicrophoneFinder.named(Optional.empty()),
                voice.open(Path.of("target", "readback")),
                new LineLoudspeaker(Optional.empty()),
                Optional.empty(),
                new LiveSession.Settings(ListeningMode.OPEN, true, -55, false),
                Clock.systemUTC());
    }

    public static void main(String[] args) throws Exception {
        VoiceChoice voice = VoiceChoice.valueOf((args.length > 0 ? args[0] : "flite").toUpperCase(Locale.ROOT));
        HushTimes measure = new HushTimes(voice, args.length > 1 ? Integer.parseInt(args[1]) : 20);
        measure.run(voice);
    }

    private void run(VoiceChoice voice) throws Exception {
        Thread running = new Thread(session::run, "session");
        running.setDaemon(true);
        running.start();
        pause(4000);
        List<Double> ready = new ArrayList<>();
        List<Double> made = new ArrayList<>();
        List<Double> key = new ArrayList<>();
        List<Double> spoken = new ArrayList<>();
        session.live().strike(new Stroke.Pressed(Stroke.Key.ESCAPE));
        quiet();
        // The first answer opens the line, and makes the phrase.
        begin("help");
        hush(() -> session.live().strike(new Stroke.Pressed(Stroke.Key.ESCAPE)));
        for (int i = 0; i < times; i++) {
            ready.add(begin("help"));
            pause(400);
            key.add(hush(() -> session.live().strike(new Stroke.Pressed(Stroke.Key.ESCAPE))));
            // A note is read back, so that this text was never made before.
            made.add(begin("altitude " + (1000 + 37 * i) + " feet"));
            session.live().strike(new Stroke.Pressed(Stroke.Key.ESCAPE));
            quiet();
            begin("help");
            pause(400);
            spoken.add(interrupted());
            pause(1500);
            session.live().strike(new Stroke.Pressed(Stroke.Key.ESCAPE));
            quiet();
        }
        session.live().end();
        running.join();
        session.close();
        System.out.println(voice + ", milliseconds: median, 95th percentile, most of " + times);
        tell("begins, phrase ready", ready);
        tell("begins, phrase made anew", made);
        tell("silent after a key", key);
        tell("silent after speech (headset)", spoken);
        loudspeaker.close();
        mouth.close();
        Files.delete(speech);
    }

    private static void tell(String what, List<Double> millis) {
        List<Double> sorted = new ArrayList<>(millis);
        Collections.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "%-30s %6.0f %6.0f %6.0f%n",
                what,
                sorted.get(sorted.size() / 2),
                sorted.get((int) Math.ceil(0.95 * sorted.size()) - 1),
                sorted.get(sorted.size() - 1));
    }

    /** Milliseconds from typing the words to the first sound. */
    private double begin(String words) {
        long from = System.nanoTime();
        session.live().write(words);
        await(() -> loudspeaker.lastLoud > from, "no answer to " + words);
        return (loudspeaker.firstLoudAfter(from) - from) / 1e6;
    }

    /** Milliseconds from the deed to the last sound. */
    private double hush(Runnable deed) {
        long from = System.nanoTime();
        deed.run();
        return silentSince(from);
    }

    private double interrupted() throws IOException {
        long before = System.nanoTime();
        Process playing = new ProcessBuilder("paplay", "--device=mouth", speech.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        await(() -> mouth.lastLoud > before, "the technician is not heard");
        double late = silentSince(mouth.firstLoudAfter(before));
        playing.destroy();
        return late;
    }

    private double silentSince(long from) {
        quiet();
        return Math.max(0, loudspeaker.lastLoud - from) / 1e6;
    }

    /** Waits until nothing sounds for longer than between two words. */
    private void quiet() {
        await(
                () -> System.nanoTime() - loudspeaker.lastLoud
                        > Duration.ofMillis(700).toNanos(),
                "it never falls silent");
    }

    private static void await(BooleanSupplier met, String otherwise) {
        long limit = System.nanoTime() + Math.round(LIMIT_MILLIS * 1e6);
        while (!met.getAsBoolean()) {
            if (System.nanoTime() > limit) {
                throw new AssertionError(otherwise);
            }
            pause(2);
        }
    }

    private static void pause(long millis) {
        long over = System.nanoTime() + Duration.ofMillis(millis).toNanos();
        while (System.nanoTime() < over) {
            LockSupport.parkNanos(Math.max(1, over - System.nanoTime()));
        }
    }

    /** What sounds in a sink of the sound server, as it comes. */
    private static final class Monitor implements AutoCloseable {
        private static final int PIECE = Ear.RATE / 100;
        private static final int LOUD = 300;

        private final Process recorder;
        private final List<Long> louds = Collections.synchronizedList(new ArrayList<>());
        private volatile long lastLoud;

        private Monitor(String source) throws IOException {
            recorder = new ProcessBuilder(
                            "parec",
                            "--device=" + source,
                            "--rate=" + Ear.RATE,
                            "--channels=1",
                            "--format=s16le",
                            "--latency-msec=10")
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            Thread reading = new Thread(() -> read(recorder.getInputStream()), source);
            reading.setDaemon(true);
            reading.start();
        }

        private void read(InputStream in) {
            byte[] piece = new byte[2 * PIECE];
            try {
                while (in.readNBytes(piece, 0, piece.length) == piece.length) {
                    if (peak(piece) > LOUD) {
                        long now = System.nanoTime();
                        louds.add(now);
                        lastLoud = now;
                    }
                }
            } catch (IOException e) {
                // The recorder was ended.
                return;
            }
        }

        private static int peak(byte[] piece) {
            int peak = 0;
            for (int i = 0; i < piece.length; i += 2) {
                peak = Math.max(peak, Math.abs((piece[i] & 0xff) | (piece[i + 1] << 8)));
            }
            return peak;
        }

        long firstLoudAfter(long moment) {
            synchronized (louds) {
                return louds.stream().filter(loud -> loud > moment).findFirst().orElseThrow();
            }
        }

        @Override
        public void close() {
            recorder.destroy();
        }
    }
}
