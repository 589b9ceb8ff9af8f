package readback.assistant.setup;

import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import readback.assistant.ear.Ear;
import readback.assistant.ear.EarUnavailableException;
import readback.assistant.ear.Listening;
import readback.assistant.ear.Utterance;
import readback.assistant.echo.PlayedSound;
import readback.assistant.microphone.LevelMeter;
import readback.assistant.microphone.Microphone;
import readback.assistant.microphone.MicrophoneReader;
import readback.grammar.Vocabulary;

/**
 * What listens while a tablet is set up: the microphone that was chosen, how loud it is, and the recogniser. It belongs
 * to the thread of {@link SetupRun}; microphone and the opening of the recogniser have threads of their own and only
 * post inputs to that one.
 */
final class SetupEar implements AutoCloseable {

    /** About ten seconds of sound; where the ear is slower than that something else is wrong. */
    private static final int MOST_WAITING = 1000;

    /** By how much the level that is shown falls back with each piece of sound, so that it can be read, in decibels. */
    private static final double FALL = 0.6;

    /** Takes what the microphone gives, on the thread of setting up. */
    interface Hearer {

        /** A piece of sound, and what the loudspeaker played at that time. */
        void sound(short[] chunk, short[] playedThen);

        /** There is no sound any more. */
        void lost(String why);
    }

    private final SetupRun.Devices devices;
    private final PlayedSound played;
    private final BlockingQueue<Runnable> inputs;
    private final Hearer hearer;
    private final LevelMeter meter = new LevelMeter(Microphone.RATE, LevelMeter.SILENCE);
    private @Nullable MicrophoneReader reader;
    private @Nullable FromMicrophone from;
    private @Nullable CompletableFuture<Ear> opening;
    private @Nullable Ear ear;
    private @Nullable Listening listening;
    private boolean works;
    private double level = LevelMeter.SILENCE;

    SetupEar(SetupRun.Devices devices, PlayedSound played, BlockingQueue<Runnable> inputs, Hearer hearer) {
        this.devices = devices;
        this.played = played;
        this.inputs = inputs;
        this.hearer = hearer;
    }

    /** To this microphone from now on; the recogniser is opened with the first. */
    void listenTo(String microphone) {
        leaveMicrophone();
        FromMicrophone listener = new FromMicrophone();
        MicrophoneReader fresh = new MicrophoneReader(devices.microphone(microphone), listener);
        reader = fresh;
        from = listener;
        fresh.start();
        if (opening == null) {
            opening = CompletableFuture.supplyAsync(() -> {
                try {
                    Ear open = devices.ear();
                    inputs.add(() -> ear = open);
                    return open;
                } catch (EarUnavailableException e) {
                    throw new CompletionException(e);
                }
            });
        }
    }

    /** Whether the microphone gives sound. */
    boolean works() {
        return works;
    }

    /** Whether there is sound and somebody who understands it. */
    boolean understands() {
        return works && ear != null;
    }

    /** How loud it was lately, in decibels of full scale. */
    double level() {
        return level;
    }

    /**
     * Once the recogniser is open, or is known to be missing; never, where no microphone was chosen.
     *
     * @param next takes why there is none
     */
    void whenOpen(Consumer<Optional<String>> next) {
        CompletableFuture<Ear> awaited = opening;
        if (awaited != null) {
            opening = awaited.whenComplete((open, failure) ->
                    inputs.add(() -> next.accept(Optional.ofNullable(failure).map(SetupEar::sentence))));
        }
    }

    /** What was understood with this piece of sound. */
    Optional<Utterance> hear(short[] chunk, Supplier<Vocabulary> phrases) {
        Ear open = ear;
        if (open == null) {
            return Optional.empty();
        }
        Listening now = listening;
        if (now == null) {
            now = open.listen(phrases.get());
            listening = now;
        }
        return now.hear(chunk);
    }

    /** What was heard so far belongs to nothing any more; other phrases may be listened for next. */
    void forget() {
        Listening old = listening;
        listening = null;
        if (old != null) {
            old.close();
        }
    }

    private static String sentence(Throwable failure) {
        Throwable cause = failure.getCause();
        return String.valueOf(cause == null ? failure.getMessage() : cause.getMessage());
    }

    private void leaveMicrophone() {
        MicrophoneReader before = reader;
        FromMicrophone listener = from;
        reader = null;
        from = null;
        works = false;
        if (before != null && listener != null) {
            listener.leave();
            before.close();
        }
    }

    @Override
    public void close() {
        leaveMicrophone();
        forget();
        Ear open = ear;
        if (open != null) {
            open.close();
        }
    }

    /** Posts what the microphone gives. */
    private final class FromMicrophone implements MicrophoneReader.Listener {
        private volatile boolean old;

        @Override
        public void sound(short[] chunk) {
            short[] playedThen = played.next(chunk.length);
            if (inputs.size() < MOST_WAITING) {
                post(() -> {
                    meter.hear(chunk);
                    level = Math.max(meter.level(), level - FALL);
                    hearer.sound(chunk, playedThen);
                });
            }
        }

        @Override
        public void found(String device) {
            post(() -> works = true);
        }

        @Override
        public void lost(String why) {
            post(() -> {
                works = false;
                hearer.lost(why);
            });
        }

        @Override
        public void overrun(long count) {
            // a trial that lost sound is made again by whoever sees that it went wrong
        }

        private void post(Runnable input) {
            inputs.add(() -> {
                if (!old) {
                    input.run();
                }
            });
        }

        void leave() {
            old = true;
        }
    }
}
