package readback.assistant.setup;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import readback.assistant.echo.MonitoredLoudspeaker;
import readback.assistant.echo.PlayedSound;
import readback.assistant.sound.Samples;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.LoudspeakerLostException;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceFailedException;
import readback.prompts.text.Language;

/**
 * What speaks while a tablet is set up: everything on one thread of its own, one after the other, and what is begun
 * silences what was said before. Its methods belong to the thread of {@link SetupRun}; what they hand back comes on the
 * voice's.
 */
final class SetupVoice implements AutoCloseable {

    /** A voice that says so little at a time is no voice. */
    private static final int MOST_TIMES = 6;

    private final Language language;
    private final SetupRun.Devices devices;
    private final PlayedSound played = new PlayedSound();
    private final ExecutorService speaking = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "setup-voice");
        thread.setDaemon(true);
        return thread;
    });

    /** What is said now; another number silences it. */
    private final AtomicLong saying = new AtomicLong();

    private volatile boolean audible;
    private volatile @Nullable Loudspeaker loudspeaker;
    private volatile @Nullable Voice voice;

    SetupVoice(Language language, SetupRun.Devices devices) {
        this.language = language;
        this.devices = devices;
    }

    /** Its name; empty while nothing was said. */
    String name() {
        Voice speaker = voice;
        return speaker == null ? "" : speaker.name();
    }

    /** Whether it is heard now. */
    boolean audible() {
        return audible;
    }

    /** What the loudspeaker played, for whoever listens to it. */
    PlayedSound played() {
        return played;
    }

    /** By this loudspeaker from now on. */
    void by(Loudspeaker next) {
        hush();
        Loudspeaker old = loudspeaker;
        loudspeaker = new MonitoredLoudspeaker(next, played);
        if (old != null) {
            speaking.execute(old::close);
        }
    }

    void hush() {
        saying.incrementAndGet();
    }

    void say(String text) {
        long wanted = saying.incrementAndGet();
        speaking.execute(() -> said(text, () -> false, wanted));
    }

    /**
     * Says something to try the loudspeaker by; a device that just woke up may take nothing at first.
     *
     * @param ended takes why it could not be said
     */
    void test(String text, Consumer<Optional<String>> ended) {
        long wanted = saying.incrementAndGet();
        speaking.execute(() -> {
            Optional<String> failure = said(text, () -> false, wanted);
            ended.accept(failure.isPresent() ? said(text, () -> false, wanted) : failure);
        });
    }

    /**
     * Says something to listen to itself by.
     *
     * @param more whether it is said once more
     * @param ended takes why it was not said to its end
     */
    void listenedTo(String text, BooleanSupplier more, Consumer<Optional<String>> ended) {
        long wanted = saying.incrementAndGet();
        speaking.execute(() -> {
            Optional<String> failure = said(text, more, wanted);
            Optional<String> silenced =
                    saying.get() == wanted ? Optional.empty() : Optional.of(language.label("setup.echo.silenced"));
            ended.accept(failure.or(() -> silenced));
        });
    }

    /** Does something after all that is to be said now was said or silenced. */
    void afterwards(Runnable next) {
        speaking.execute(next);
    }

    /** Why it could not be said; empty where it was, or was silenced. */
    private Optional<String> said(String text, BooleanSupplier more, long wanted) {
        Loudspeaker out = loudspeaker;
        if (out == null || saying.get() != wanted) {
            return Optional.empty();
        }
        try {
            Samples sound = voice().speak(text);
            if (sound.length() == 0) {
                return Optional.of(language.label("setup.sentence.no-voice"));
            }
            audible = true;
            int times = 0;
            do {
                out.play(sound, () -> saying.get() != wanted);
                times++;
            } while (more.getAsBoolean() && times < MOST_TIMES && saying.get() == wanted);
            return Optional.empty();
        } catch (VoiceFailedException | LoudspeakerLostException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        } finally {
            audible = false;
        }
    }

    private Voice voice() throws VoiceFailedException {
        Voice known = voice;
        if (known == null) {
            known = devices.voice();
            voice = known;
        }
        return known;
    }

    @Override
    public void close() {
        hush();
        speaking.shutdownNow();
        try {
            if (!speaking.awaitTermination(1, TimeUnit.SECONDS)) {
                // a device that hangs; its thread ends with the process
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Loudspeaker out = loudspeaker;
        if (out != null) {
            out.close();
        }
        Voice speaker = voice;
        if (speaker != null) {
            speaker.close();
        }
    }
}
