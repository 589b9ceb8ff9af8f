package readback.assistant.live;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import readback.assistant.dialogue.Event;
import readback.assistant.ear.AudioFileFeed;
import readback.assistant.ear.BundledEar;
import readback.assistant.ear.Ear;
import readback.assistant.ear.SpokenLines;
import readback.assistant.ear.StepPhrasesForTests;
import readback.assistant.ear.Utterance;
import readback.assistant.microphone.Microphone;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordedSession;
import readback.assistant.sound.Samples;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.VoiceChoice;

/**
 * A live session for hours, in a fraction of the time: {@code Soak [MINUTES [TIMES FASTER [VOICE]]]}, 120 minutes,
 * eight times faster and flite when nothing is said. Run from the folder assistant.
 *
 * <p>A caller speaks the lines of the demonstration again and again whenever he is listened to; microphone, loudspeaker
 * and clock run so many times faster, or as fast as the ear can follow. Everything else is the program's own: ear,
 * dialogue, voice, screen, record on disk. Every five minutes of the session memory and processor are shown: the heap
 * after a collection, what the process keeps in memory (Linux), processor seconds a second of the session, the voice's
 * own processes not counted. It ends badly when something was said that is not in the record.
 */
public final class Soak {

    private static final int CHUNK = Ear.RATE / 50;
    private static final Duration EVERY = Duration.ofMinutes(5);
    private static final double MARGIN_SECONDS = 0.4;

    /** Lines of the call that may come again and again. */
    private static final int REPEATED_FROM = 5;

    private static final int REPEATED_TO = 11;

    /** A fan far away, so that the ear is never given digital silence. */
    private static final double NOISE = 20;

    /** The caller waits when so many pieces of sound wait for the ear. */
    private static final int LAG = 50;

    private final double faster;
    private final AtomicLong chunks = new AtomicLong();
    private final Instant start = Instant.now();

    private Soak(double faster) {
        this.faster = faster;
    }

    public static void main(String[] args) throws Exception {
        Duration length = Duration.ofMinutes(args.length > 0 ? Long.parseLong(args[0]) : 120);
        Soak soak = new Soak(args.length > 1 ? Double.parseDouble(args[1]) : 8);
        soak.run(length, VoiceChoice.valueOf((args.length > 2 ? args[2] : "flite").toUpperCase(Locale.ROOT)));
    }

    private void run(Duration length, VoiceChoice voice) throws Exception {
        List<Samples> lines = lines();
        Path folder = Files.createTempDirectory("soak");
        Caller caller = new Caller(lines);
        MeasuredSession session = new MeasuredSession(
                folder,
                () -> caller,
                voice.open(Path.of("target", "readback")),
                new Room(),
                Optional.empty(),
                new LiveSession.Settings(ListeningMode.OPEN, false, -55, false),
                new Faster());
        caller.session = session;
        Thread running = new Thread(session::run, "session");
        running.start();
        System.out.println("minute  said  heap MB  resident MB  threads  processor");
        Duration next = EVERY;
        double cpu = cpuSeconds();
        while (next.compareTo(length) <= 0) {
            while (elapsed().compareTo(next) < 0) {
                if (!running.isAlive()) {
                    throw new AssertionError("the session ended after " + elapsed() + ": see " + folder);
                }
                LockSupport.parkNanos(Duration.ofMillis(50).toNanos());
            }
            double used = cpuSeconds();
            row(next, caller.said.get(), (used - cpu) / EVERY.toSeconds());
            cpu = cpuSeconds();
            next = next.plus(EVERY);
        }
        caller.enough = true;
        while (caller.speaking() || !session.listening()) {
            LockSupport.parkNanos(Duration.ofMillis(50).toNanos());
        }
        session.live().end();
        running.join();
        session.close();
        session.live().summary().forEach(System.out::println);
        judge(folder.resolve("measured"), caller.said.get());
    }

    /** The lines of the call, one sound each. */
    private static List<Samples> lines() throws Exception {
        Samples call = SpokenLines.sound("piston").at(Ear.RATE);
        List<Samples> lines = new ArrayList<>();
        try (Ear ear = BundledEar.open()) {
            AudioFileFeed feed = new AudioFileFeed(ear, call);
            while (!feed.ended()) {
                Optional<Utterance> heard = feed.next(StepPhrasesForTests.ALL);
                heard.ifPresent(utterance -> lines.add(Samples.of(
                        call.slice((int) (Math.max(0, utterance.startSeconds() - MARGIN_SECONDS) * Ear.RATE), (int)
                                Math.min(call.length(), (utterance.endSeconds() + MARGIN_SECONDS) * Ear.RATE)),
                        Ear.RATE)));
            }
        }
        return lines;
    }

    private static void row(Duration at, int said, double load) throws IOException {
        System.gc();
        long heap = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
        System.out.printf(
                Locale.ROOT,
                "%6d %5d %8.1f %12.1f %8d %10.3f%n",
                at.toMinutes(),
                said,
                heap / 1e6,
                residentBytes() / 1e6,
                Thread.activeCount(),
                load);
    }

    private static long residentBytes() throws IOException {
        Path status = Path.of("/proc/self/status");
        return !Files.exists(status)
                ? 0
                : Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("VmRSS:"))
                        .mapToLong(line -> 1024 * Long.parseLong(line.replaceAll("[^0-9]", "")))
                        .sum();
    }

    private static double cpuSeconds() {
        return ProcessHandle.current()
                        .info()
                        .totalCpuDuration()
                        .orElse(Duration.ZERO)
                        .toMillis()
                / 1e3;
    }

    private static void judge(Path folder, int said) throws Exception {
        RecordedSession recorded = RecordedSession.read(folder);
        List<Event.Heard> heard = new ArrayList<>();
        int understood = 0;
        for (Entry entry : recorded.entries()) {
            if (entry.event() instanceof Event.Heard each && each.source() == Event.Source.VOICE) {
                heard.add(each);
                understood += entry.outcome().understood().doubtful() ? 0 : 1;
            }
        }
        System.out.printf(
                Locale.ROOT,
                "Said %d, heard %d, understood %d; record of %d lines, %s.%n",
                said,
                heard.size(),
                understood,
                recorded.entries().size(),
                recorded.fault().map(Object::toString).orElse("whole"));
        if (heard.size() < said || recorded.fault().isPresent()) {
            throw new AssertionError("something that was said is not in the record");
        }
    }

    /** How long the session lasts by its own clock, which is the sound at the microphone. */
    private Duration elapsed() {
        return Duration.ofMillis(20 * chunks.get());
    }

    private final class Faster extends Clock {
        @Override
        public Instant instant() {
            return start.plus(elapsed());
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }

    /** A loudspeaker that nobody hears. */
    private final class Room implements Loudspeaker {
        @Override
        public String name() {
            return "room";
        }

        @Override
        public void play(Samples sound, BooleanSupplier stop) {
            Duration over = elapsed().plusMillis(Math.round(1000 * sound.seconds()));
            while (elapsed().compareTo(over) < 0
                    && !stop.getAsBoolean()
                    && !Thread.currentThread().isInterrupted()) {
                LockSupport.parkNanos(Duration.ofMillis(2).toNanos());
            }
        }

        @Override
        public void close() {}
    }

    /** A caller at a microphone: speaks the next line when he has been listened to for half a second. */
    private final class Caller implements Microphone {
        private final List<Samples> lines;
        private volatile @Nullable MeasuredSession session;
        private final AtomicInteger said = new AtomicInteger();
        private volatile boolean enough;
        private volatile short[] line = new short[0];
        private volatile int at;
        private int listened;
        private volatile boolean answered = true;
        private final Random random = new Random(17);
        private long due = System.nanoTime();

        private Caller(List<Samples> lines) {
            this.lines = lines;
        }

        boolean speaking() {
            return at < line.length || !answered;
        }

        @Override
        public String name() {
            return "caller";
        }

        @Override
        public short[] read() {
            MeasuredSession now = session;
            due = Math.max(
                    due + Math.round(1e9 / 50 / faster),
                    System.nanoTime() - Duration.ofMillis(100).toNanos());
            while (System.nanoTime() < due || (now != null && now.live().soundWaiting() > LAG)) {
                LockSupport.parkNanos(Math.max(100_000, due - System.nanoTime()));
                if (Thread.currentThread().isInterrupted()) {
                    return new short[CHUNK];
                }
            }
            chunks.incrementAndGet();
            boolean listening = now != null && now.listening();
            if (at >= line.length) {
                if (!listening) {
                    // The answer to the last line has begun.
                    answered = true;
                }
                listened = listening ? listened + 1 : 0;
                // Who is not answered speaks again after three seconds: the line that went before is then missing.
                if (listening && !enough && (answered ? listened >= 25 : listened >= 150)) {
                    line = lines.get(next()).pcm();
                    at = 0;
                    said.incrementAndGet();
                    answered = false;
                    listened = 0;
                }
            }
            short[] chunk = new short[CHUNK];
            for (int i = 0; i < CHUNK; i++) {
                int speech = at < line.length ? line[at] : 0;
                at = at < line.length ? at + 1 : at;
                chunk[i] = (short) Math.max(
                        Short.MIN_VALUE, Math.min(Short.MAX_VALUE, speech + Math.round(NOISE * random.nextGaussian())));
            }
            return chunk;
        }

        private int next() {
            int before = said.get();
            return before < REPEATED_TO
                    ? before
                    : REPEATED_FROM + (before - REPEATED_TO) % (REPEATED_TO - REPEATED_FROM);
        }

        @Override
        public long overruns() {
            return 0;
        }

        @Override
        public void close() {}
    }
}
