package readback.assistant.selfcheck;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import readback.assistant.ear.AudioFileFeed;
import readback.assistant.ear.Ear;
import readback.assistant.ear.EarUnavailableException;
import readback.assistant.ear.Utterance;
import readback.assistant.microphone.LevelMeter;
import readback.assistant.microphone.Microphone;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.microphone.MicrophoneLostException;
import readback.assistant.sound.Samples;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.LoudspeakerLostException;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceFailedException;

/** Looks at everything that a session needs. Each check stands alone: one that fails spoils no other. */
public final class SelfCheck {

    /** What is looked at. */
    public record Equipment(
            EarSource ear, MicrophoneFinder.Socket microphone, Voice voice, Loudspeaker loudspeaker, Path sessions) {}

    /** A way to an ear that may not be had. */
    @FunctionalInterface
    public interface EarSource {
        Ear open() throws EarUnavailableException;
    }

    private static final double RECORDING_SECONDS = 2;
    /** Microphone and ear settle in this time. */
    private static final double TAIL_SECONDS = 1;

    /** Words that are spoken to the microphone and that every vocabulary has. */
    private static final List<String> SPOKEN = List.of("suction one three zero", "suction one one eight");

    private static final double TOO_QUIET = -70;
    private static final double TOO_LOUD = -35;
    private static final long ENOUGH_BYTES = 500_000_000;
    /** The recogniser must leave time for everything else. */
    private static final double RELAXED_REAL_TIME = 0.3;

    private final Equipment equipment;

    public SelfCheck(Equipment equipment) {
        this.equipment = equipment;
    }

    /** Runs all checks, which takes some ten seconds; each finding is told as soon as it is there. */
    public List<CheckResult> run(Consumer<CheckResult> told) {
        List<CheckResult> findings = new ArrayList<>();
        Consumer<CheckResult> keep = finding -> {
            findings.add(finding);
            told.accept(finding);
        };
        keep.accept(java());
        keep.accept(microphone());
        Optional<Samples> voice = voice(keep);
        try (Ear ear = equipment.ear().open()) {
            keep.accept(CheckResult.good("recogniser", ear.name() + " is loaded from " + ear.place() + "."));
            voice.ifPresent(sound -> {
                keep.accept(speed(ear, sound));
                keep.accept(loop(ear, sound));
            });
        } catch (EarUnavailableException e) {
            keep.accept(CheckResult.bad(
                    "recogniser", String.valueOf(e.getMessage()), "Readback can be used with --typed until then."));
        }
        keep.accept(disk());
        return findings;
    }

    private static CheckResult java() {
        String what = "Java " + Runtime.version() + " on " + System.getProperty("os.name") + " "
                + System.getProperty("os.arch") + ", " + Runtime.getRuntime().availableProcessors() + " processors.";
        return Runtime.getRuntime().availableProcessors() < 2
                ? CheckResult.doubtful("Java", what, "Answers may come late: two processors are better.")
                : CheckResult.good("Java", what);
    }

    private CheckResult microphone() {
        try (Microphone microphone = equipment.microphone().open()) {
            LevelMeter meter = new LevelMeter(Microphone.RATE, LevelMeter.SILENCE);
            double loudest = LevelMeter.SILENCE;
            int heard = 0;
            while (heard < RECORDING_SECONDS * Microphone.RATE) {
                short[] chunk = microphone.read();
                meter.hear(chunk);
                loudest = Math.max(loudest, meter.level());
                heard += chunk.length;
            }
            String what = String.format(
                    Locale.ROOT,
                    "'%s' recorded %.0f s: noise %.0f dB, loudest %.0f dB of full scale, sound lost %d times.",
                    microphone.name(),
                    RECORDING_SECONDS,
                    meter.noise(),
                    loudest,
                    microphone.overruns());
            if (loudest < TOO_QUIET) {
                return CheckResult.doubtful(
                        "microphone", what, "It is silent: see whether it is muted, or choose another (--microphone).");
            }
            return meter.noise() > TOO_LOUD
                    ? CheckResult.doubtful(
                            "microphone", what, "It is loud here: use a headset, or turn the level down.")
                    : CheckResult.good("microphone", what);
        } catch (MicrophoneLostException e) {
            return CheckResult.bad(
                    "microphone",
                    String.valueOf(e.getMessage()),
                    "Readback can be used with keys until one is there (--microphone).");
        }
    }

    private Optional<Samples> voice(Consumer<CheckResult> keep) {
        try {
            long begun = System.nanoTime();
            Samples sound = equipment.voice().speak(SPOKEN.get(0));
            double seconds = (System.nanoTime() - begun) / 1e9;
            if (sound.length() == 0) {
                keep.accept(CheckResult.doubtful(
                        "voice",
                        "There is no voice; a tone sounds instead.",
                        "Install flite, or choose --voice embedded."));
                return Optional.empty();
            }
            String what = String.format(
                    Locale.ROOT,
                    "%s made %.1f s of speech in %.2f s.",
                    equipment.voice().name(),
                    sound.seconds(),
                    seconds);
            keep.accept(
                    seconds > sound.seconds()
                            ? CheckResult.doubtful("voice", what, "It is slow here: choose another voice (--voice).")
                            : CheckResult.good("voice", what));
            return Optional.of(sound);
        } catch (VoiceFailedException e) {
            keep.accept(CheckResult.bad("voice", String.valueOf(e.getMessage()), "Read the screen until then."));
            return Optional.empty();
        }
    }

    private static CheckResult speed(Ear ear, Samples sound) {
        long begun = System.nanoTime();
        new AudioFileFeed(ear, sound).next(SPOKEN);
        double factor = (System.nanoTime() - begun) / 1e9 / sound.seconds();
        String what = String.format(Locale.ROOT, "One second of speech is recognised in %.2f s.", factor);
        return factor > RELAXED_REAL_TIME
                ? CheckResult.doubtful(
                        "speed", what, "Answers may come late: close other programs, plug the charger in.")
                : CheckResult.good("speed", what);
    }

    /** Speaks, and listens to what the microphone hears of it. */
    private CheckResult loop(Ear ear, Samples sound) {
        List<short[]> chunks = new ArrayList<>();
        try (Microphone microphone = equipment.microphone().open()) {
            SpeakingThread speaking = new SpeakingThread(equipment.loudspeaker(), sound);
            speaking.start();
            double wanted = sound.seconds() + TAIL_SECONDS;
            int heard = 0;
            while (heard < wanted * Microphone.RATE) {
                short[] chunk = microphone.read();
                chunks.add(chunk);
                heard += chunk.length;
            }
            Optional<String> failure = speaking.failure();
            if (failure.isPresent()) {
                return CheckResult.bad("loudspeaker", failure.get(), "Plug one in, or choose another (--loudspeaker).");
            }
            Optional<Utterance> words = new AudioFileFeed(ear, joined(chunks)).next(SPOKEN);
            String said = words.map(Utterance::words).orElse("");
            return said.equals(SPOKEN.get(0))
                    ? CheckResult.good("loudspeaker", "The voice was played, heard by the microphone and understood.")
                    : CheckResult.good(
                            "loudspeaker",
                            "The voice was played; the microphone did not understand it"
                                    + (said.isEmpty() ? "" : " ('" + said + "')")
                                    + ", as is right with a headset.");
        } catch (MicrophoneLostException e) {
            return CheckResult.doubtful(
                    "loudspeaker", "Whether the voice can be heard was not checked.", "Listen for it yourself.");
        }
    }

    private static Samples joined(List<short[]> chunks) {
        return Samples.joined(
                chunks.stream().map(chunk -> Samples.of(chunk, Microphone.RATE)).toList(), Microphone.RATE);
    }

    private CheckResult disk() {
        Path folder = equipment.sessions();
        try {
            Files.createDirectories(folder);
            Path probe = Files.createTempFile(folder, "selfcheck-", ".tmp");
            try (FileChannel channel = FileChannel.open(probe, StandardOpenOption.WRITE)) {
                long begun = System.nanoTime();
                channel.write(ByteBuffer.wrap(new byte[1000]));
                channel.force(false);
                double millis = (System.nanoTime() - begun) / 1e6;
                long free = Files.getFileStore(folder).getUsableSpace();
                String what = String.format(
                        Locale.ROOT,
                        "Sessions go to '%s': %.1f GB free, an entry is on disk in %.1f ms.",
                        folder,
                        free / 1e9,
                        millis);
                return free < ENOUGH_BYTES
                        ? CheckResult.doubtful(
                                "session folder", what, "Make room, or name another folder (--sessions).")
                        : CheckResult.good("session folder", what);
            } finally {
                Files.deleteIfExists(probe);
            }
        } catch (IOException e) {
            return CheckResult.bad(
                    "session folder",
                    "Nothing can be written in '" + folder + "' (" + e.getMessage() + ").",
                    "Make it writable, or name another folder (--sessions).");
        }
    }

    /** Plays while the checking thread records. */
    private static final class SpeakingThread extends Thread {
        private final Loudspeaker loudspeaker;
        private final Samples sound;
        private volatile Optional<String> failure = Optional.empty();

        SpeakingThread(Loudspeaker loudspeaker, Samples sound) {
            super("selfcheck-speaking");
            this.loudspeaker = loudspeaker;
            this.sound = sound;
            setDaemon(true);
        }

        @Override
        public void run() {
            try {
                loudspeaker.play(sound, () -> false);
            } catch (LoudspeakerLostException e) {
                failure = Optional.of(String.valueOf(e.getMessage()));
            }
        }

        Optional<String> failure() {
            return failure;
        }
    }
}
