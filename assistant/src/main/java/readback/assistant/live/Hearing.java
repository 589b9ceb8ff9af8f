package readback.assistant.live;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import readback.assistant.ear.Ear;
import readback.assistant.ear.Listening;
import readback.assistant.ear.Utterance;
import readback.assistant.echo.BargeIn;
import readback.assistant.echo.PlayedSound;
import readback.assistant.microphone.LevelMeter;
import readback.assistant.sound.Samples;
import readback.grammar.Vocabulary;

/**
 * Listens live, on the one thread that uses the ear. Sound comes in from the microphone's thread; what was said goes
 * out as inputs of the session. When the dialogue goes on to another step while someone is speaking already, what was
 * heard since the last utterance is heard again with the new phrases: nothing is lost.
 */
final class Hearing implements AutoCloseable {

    /** What a screen shows of the microphone. */
    record Meter(double level, double noise, boolean open) {
        static final Meter SILENT = new Meter(LevelMeter.SILENCE, LevelMeter.SILENCE, false);
    }

    /** At most this many pieces of sound wait: 10 seconds in reads of 20 ms. */
    private static final int WAITING = 500;

    /** Longer pieces delay the answer. */
    private static final int LONGEST = Ear.RATE / 5;

    /** Kept while no word is heard yet: the recogniser tells a word up to half a second after it began. */
    private static final int RUN_UP = Ear.RATE;

    /** Kept of what was said since the last utterance. */
    private static final int REMEMBERED = Ear.RATE * 20;

    /** Loud sound of this length is someone speaking, not a click. */
    private static final double INTERRUPTION_SECONDS = 0.06;

    /** Sound that never stood out of the noise for this long holds no words: what was heard there was noise. */
    private static final double SPEECH_SECONDS = 0.04;

    /** What is said from this many seconds after Readback fell silent on did not begin before. */
    private static final double BEGUN_SECONDS = 0.3;

    /** How orders are heard while Readback speaks. */
    record OverVoice(BargeIn orders, PlayedSound played) {}

    private final Ear ear;
    private final BooleanSupplier speaking;
    private final boolean interrupts;
    private final Consumer<LiveInput> out;
    private final LevelMeter level;
    private final BlockingQueue<Runnable> tasks = new LinkedBlockingQueue<>(WAITING);
    private final Thread thread = new Thread(this::run, "ear");
    private final AudioBuffer memory = new AudioBuffer(REMEMBERED);
    private Vocabulary vocabulary = Vocabulary.ofPhrases(List.of());
    private @Nullable Listening listening;
    private String partial = "";
    private double longestOpen;
    private double loudest = LevelMeter.SILENCE;
    private boolean wasDeaf;
    /** Absent where only silence is listened to, and after it proved hopeless. */
    private volatile @Nullable OverVoice overVoice;
    /** An order is taken up that was begun while Readback spoke. */
    private boolean takingOrder;
    /** Someone was speaking when Readback fell silent, and the beginning of that was not heard. */
    private boolean beginningLost;
    /** How long it listens since Readback fell silent or the last utterance was over. */
    private double heardSeconds;

    private boolean open;
    /** The owner's last wish. */
    private boolean wantedOpen;

    private volatile boolean stopped;
    private volatile Meter meter = Meter.SILENT;

    /**
     * @param speaking whether Readback itself is speaking, so that sound is passed over but for what may interrupt it
     * @param overVoice how orders are heard meanwhile; empty where none are
     * @param interrupts whether loud sound is told at once, for a voice that may be interrupted
     * @param gate level in decibels of full scale below which nothing is speech
     */
    Hearing(
            Ear ear,
            BooleanSupplier speaking,
            Optional<OverVoice> overVoice,
            boolean interrupts,
            double gate,
            Consumer<LiveInput> out) {
        this.ear = ear;
        this.speaking = speaking;
        this.overVoice = overVoice.orElse(null);
        this.interrupts = interrupts;
        this.level = new LevelMeter(Ear.RATE, gate);
        this.out = out;
        thread.setDaemon(true);
        thread.start();
    }

    /** Takes sound that was just recorded; false when it had to be dropped because the ear lags far behind. */
    boolean sound(short[] chunk) {
        if (stopped) {
            return true;
        }
        long at = System.nanoTime();
        boolean speakingThen = speaking.getAsBoolean();
        OverVoice over = overVoice;
        if (over == null) {
            return tasks.offer(() -> hear(chunk, at, speakingThen));
        }
        short[] played = over.played().next(chunk.length);
        return tasks.offer(() -> hearOver(chunk, played, at, speakingThen));
    }

    /** Listens for nothing any more while Readback speaks. Any thread. */
    void onlyInSilence() {
        put(this::endOverVoice);
    }

    /** Expects these phrases from now on. */
    void expect(Vocabulary next) {
        put(() -> change(next));
    }

    /** Opens or closes the ear for the sound that comes from now on. Owner's thread. */
    void open(boolean opened) {
        if (opened != wantedOpen) {
            wantedOpen = opened;
            put(() -> open = opened);
        }
    }

    /** Takes what is being said as finished, without waiting for a silence. */
    void finish() {
        put(() -> {
            if (listening != null) {
                report(listening.finish(), System.nanoTime());
            }
        });
    }

    /** How many pieces of sound and orders wait for the ear. */
    int waiting() {
        return tasks.size();
    }

    Meter meter() {
        return meter;
    }

    /** Waits for a place while the ear lags behind; an ear that is over takes nothing. */
    private void put(Runnable task) {
        try {
            while (!stopped && !tasks.offer(task, 100, TimeUnit.MILLISECONDS)) {
                // full
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        try {
            while (!stopped) {
                Runnable task = tasks.poll(1, TimeUnit.SECONDS);
                if (task != null) {
                    task.run();
                }
            }
        } catch (InterruptedException e) {
            stopped = true;
        } catch (RuntimeException e) {
            stopped = true;
            out.accept(new LiveInput.MicrophoneLost(
                    "Nothing is heard any more (" + e.getMessage() + "): type, or start Readback again."));
        } finally {
            forget();
            endOverVoice();
            ear.close();
        }
    }

    private void hearOver(short[] chunk, short[] played, long at, boolean speakingNow) {
        OverVoice over = overVoice;
        if (over == null) {
            hear(chunk, at, speakingNow);
            return;
        }
        short[] clean = over.orders().clean(chunk, played);
        if (over.orders().hopeless()) {
            endOverVoice();
            out.accept(new LiveInput.EchoTooStrong());
            hear(chunk, at, speakingNow);
            return;
        }
        takingOrder &= speakingNow || !partial.isEmpty();
        if (takingOrder) {
            hear(clean, at, false);
        } else if (speakingNow && open) {
            hearOrder(over.orders(), clean);
        } else {
            beginningLost |= wasDeaf && open && over.orders().open();
            over.orders().forget();
            hear(chunk, at, speakingNow);
        }
    }

    /** An order silences the voice; what was said of it so far is then heard like anything else. */
    private void hearOrder(BargeIn orders, short[] clean) {
        if (!wasDeaf) {
            stopHearing();
        }
        listenToLevel(clean);
        memory.add(clean);
        if (orders.order(clean).isPresent()) {
            out.accept(new LiveInput.Interrupted());
            takingOrder = true;
            wasDeaf = false;
            longestOpen = SPEECH_SECONDS;
            loudest = level.level();
            orders.forget();
            hearAgain();
        } else if (orders.silent()) {
            memory.keepLast(RUN_UP);
        }
    }

    private void endOverVoice() {
        OverVoice over = overVoice;
        overVoice = null;
        takingOrder = false;
        if (over != null) {
            over.orders().close();
        }
    }

    private void hear(short[] chunk, long at, boolean deafNow) {
        listenToLevel(chunk);
        if (deafNow && interrupts && level.openSeconds() >= INTERRUPTION_SECONDS) {
            out.accept(new LiveInput.Interrupted());
        }
        if (!open || (deafNow && !interrupts)) {
            if (!wasDeaf) {
                stopHearing();
            }
            return;
        }
        wasDeaf = false;
        longestOpen = Math.max(longestOpen, level.openSeconds());
        loudest = level.open() ? Math.max(loudest, level.level()) : loudest;
        memory.add(chunk);
        heardSeconds += (double) chunk.length / Ear.RATE;
        feed(chunk, at);
    }

    private void listenToLevel(short[] chunk) {
        level.hear(chunk);
        meter = new Meter(level.level(), level.noise(), level.open());
    }

    private void stopHearing() {
        if (!partial.isEmpty()) {
            out.accept(new LiveInput.Partial(""));
        }
        forget();
        wasDeaf = true;
    }

    private void feed(short[] chunk, long at) {
        Listening now = listening();
        report(now.hear(chunk), at);
        if (listening != null) {
            String words = listening.partial();
            if (!words.equals(partial)) {
                partial = words;
                out.accept(new LiveInput.Partial(words));
            }
            if (words.isEmpty()) {
                memory.keepLast(RUN_UP);
            }
        }
    }

    private Listening listening() {
        Listening now = listening;
        if (now == null) {
            now = ear.listen(vocabulary);
            listening = now;
        }
        return now;
    }

    private void report(Optional<Utterance> heard, long at) {
        Listening now = listening;
        if (heard.isEmpty() || now == null) {
            return;
        }
        Utterance utterance = heard.get();
        double silence = Math.max(0, now.seconds() - utterance.endSeconds());
        boolean speech = longestOpen >= SPEECH_SECONDS;
        double aboveNoise = loudest - level.noise();
        Samples sound = memory.stretch(
                now.seconds() - utterance.startSeconds() + Utterance.MARGIN_SECONDS,
                now.seconds() - utterance.endSeconds() - Utterance.MARGIN_SECONDS);
        double begun = heardSeconds - (now.seconds() - utterance.startSeconds());
        boolean half = beginningLost && begun < BEGUN_SECONDS;
        forget();
        if (speech && half) {
            out.accept(new LiveInput.BeginningLost());
        } else if (speech) {
            out.accept(new LiveInput.Spoken(utterance, at - Math.round(silence * 1e9), aboveNoise, sound));
        } else {
            out.accept(new LiveInput.Partial(""));
        }
    }

    private void change(Vocabulary next) {
        if (next.phrases().equals(vocabulary.phrases())) {
            return;
        }
        vocabulary = next;
        hearAgain();
    }

    /** Hears what is remembered with the phrases of now. */
    private void hearAgain() {
        short[] heardAlready = memory.all();
        closeListening();
        memory.clear();
        for (int from = 0; from < heardAlready.length && !wasDeaf; from += LONGEST) {
            short[] part = AudioBuffer.part(heardAlready, from, LONGEST);
            memory.add(part);
            feed(part, System.nanoTime());
        }
    }

    private void forget() {
        closeListening();
        memory.clear();
        partial = "";
        longestOpen = 0;
        loudest = LevelMeter.SILENCE;
        takingOrder = false;
        beginningLost = false;
        heardSeconds = 0;
    }

    private void closeListening() {
        if (listening != null) {
            listening.close();
            listening = null;
        }
    }

    @Override
    public void close() {
        stopped = true;
        thread.interrupt();
        try {
            thread.join(TimeUnit.SECONDS.toMillis(2));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
