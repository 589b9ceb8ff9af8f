package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import readback.assistant.ear.Ear;
import readback.assistant.ear.EarUnavailableException;
import readback.assistant.ear.Listening;
import readback.assistant.ear.Utterance;
import readback.assistant.echo.EchoCanceller;
import readback.assistant.echo.MonitoredLoudspeaker;
import readback.assistant.echo.PlayedSound;
import readback.assistant.microphone.LevelMeter;
import readback.assistant.microphone.Microphone;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.microphone.MicrophoneReader;
import readback.assistant.screen.Action;
import readback.assistant.screen.Face;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.Stroke;
import readback.assistant.screen.View;
import readback.assistant.sound.Samples;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.LoudspeakerLostException;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceFailedException;
import readback.assistant.webrtc.ProcessingUnavailableException;
import readback.grammar.Grammar;
import readback.grammar.Vocabulary;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/**
 * Sets a tablet up with its microphone, voice and screen: whoever calls {@link #run} becomes the one thread that owns
 * state, ear and face. Microphone, voice and keys each have a thread of their own and only post inputs.
 */
public final class SetupRun {

    /** How often the level is shown anew. */
    private static final long TICK_MILLIS = 100;

    /** About ten seconds of sound; where the ear is slower than that something else is wrong. */
    private static final int MOST_WAITING = 1000;

    /** A voice that says so little at a time is no voice. */
    private static final int MOST_TIMES = 6;

    /** By how much the level that is shown falls back with each piece of sound, so that it can be read, in decibels. */
    private static final double FALL = 0.6;

    /** What the machine has, each to be had when it is first needed. */
    public interface Devices {

        MicrophoneFinder.Socket microphone(String name);

        Loudspeaker loudspeaker(String name);

        /** What speaks. */
        Voice voice() throws VoiceFailedException;

        Ear ear() throws EarUnavailableException;

        EchoCanceller canceller() throws ProcessingUnavailableException;
    }

    /** Where the settings are kept. */
    @FunctionalInterface
    public interface Store {
        /** Puts these into the file and leaves what else it says. */
        Stored write(Map<Name, String> settings);
    }

    /**
     * What came of writing.
     *
     * @param kept what the file that was there before is called now
     * @param failure why it was not written, one sentence
     */
    public record Stored(Optional<String> kept, Optional<String> failure) {}

    private final Setup setup;
    private final SetupBoard board;
    private final Grammar grammar;
    private final Language language;
    private final Devices devices;
    private final Store store;
    private final Face face;
    private final BlockingQueue<Runnable> inputs = new LinkedBlockingQueue<>();
    private final ExecutorService speaking = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "setup-voice");
        thread.setDaemon(true);
        return thread;
    });
    private final PlayedSound played = new PlayedSound();
    /** What is said now; another number silences it. */
    private final AtomicLong saying = new AtomicLong();

    private final LevelMeter meter = new LevelMeter(Microphone.RATE, LevelMeter.SILENCE);
    private final Performer performer = new Performer();
    private final Hands hands = new Hands();
    private volatile boolean audible;
    private @Nullable SetupState state;
    private @Nullable MicrophoneReader reader;
    private @Nullable FromMicrophone from;
    private volatile @Nullable Loudspeaker loudspeaker;
    private volatile @Nullable Voice voice;
    private @Nullable CompletableFuture<Ear> opening;
    private @Nullable Ear ear;
    private @Nullable Listening listening;
    private @Nullable Trial trial;
    private View.Heard heard = View.Heard.NOTHING;
    private boolean works;
    private double shownLevel = LevelMeter.SILENCE;
    private Optional<Choice> ended = Optional.empty();
    private final CompletableFuture<Boolean> over = new CompletableFuture<>();

    public SetupRun(Grammar grammar, Language language, Devices devices, Store store, Face face) {
        this.setup = new Setup(grammar, language);
        this.board = new SetupBoard(setup, language, ScreenTexts.ofSetup(language));
        this.grammar = grammar;
        this.language = language;
        this.devices = devices;
        this.store = store;
        this.face = face;
    }

    /** Asks until somebody leaves, or chooses what begins now. */
    public Choice run(Situation situation, Beginning beginning) {
        try {
            apply(setup.begin(situation, beginning));
            while (ended.isEmpty()) {
                show();
                Runnable input = inputs.poll(TICK_MILLIS, TimeUnit.MILLISECONDS);
                while (input != null && ended.isEmpty()) {
                    input.run();
                    input = inputs.poll();
                }
            }
            show();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            close();
            over.complete(false);
        }
        return ended.orElse(Choice.LEAVE);
    }

    private SetupState state() {
        SetupState now = state;
        if (now == null) {
            throw new IllegalStateException("nothing was asked yet");
        }
        return now;
    }

    private void show() {
        Voice speaker = voice;
        face.show(board.view(
                state(),
                new SetupBoard.Devices(
                        works, listens(), shownLevel, speaker == null ? "" : speaker.name(), audible, heard)));
    }

    // Inputs, from any thread

    /** A key was struck, or the screen touched. */
    public void strike(Stroke stroke) {
        inputs.add(() -> {
            hush();
            face.on(stroke).ifPresent(action -> action.performedBy(hands));
        });
    }

    /**
     * A line was typed where there is no screen; returns when it was taken.
     *
     * @return whether another one is waited for
     */
    public boolean write(String words) {
        CompletableFuture<Boolean> taken = new CompletableFuture<>();
        inputs.add(() -> {
            face.renew();
            typed(words);
            taken.complete(ended.isEmpty());
        });
        return taken.applyToEither(over, wanted -> wanted).join();
    }

    /** The screen has another size. */
    public void resize() {
        inputs.add(face::renew);
    }

    /** Nobody is there any more. */
    public void end() {
        inputs.add(() -> ended = Optional.of(Choice.LEAVE));
    }

    private void typed(String words) {
        hush();
        heard = new View.Heard(words, false, "");
        on(SetupEvent.Said.typed(words));
    }

    private void hush() {
        saying.incrementAndGet();
    }

    private void on(SetupEvent event) {
        apply(setup.on(state(), event));
    }

    private void apply(Setup.Turn turn) {
        boolean same = turn.state().equals(state);
        state = turn.state();
        if (!state().now().busy()) {
            taking(null);
        }
        if (!same) {
            closeListening();
            speak(state());
        }
        for (SetupEffect effect : turn.effects()) {
            effect.doneBy(performer);
        }
        if (!same || turn.effects().isEmpty()) {
            show();
        }
    }

    private void taking(@Nullable Trial next) {
        Trial old = trial;
        trial = next;
        if (old != null) {
            old.over();
        }
    }

    // Speaking

    /** Says what is told and asked, once somebody is known to hear it. */
    private void speak(SetupState now) {
        List<Message> messages = new ArrayList<>(now.now().told());
        messages.add(setup.question(now));
        String text = messages.stream()
                .map(message -> language.wording()
                        .spoken(message, false, now.decisions().units()))
                .filter(spoken -> !spoken.isBlank())
                .collect(Collectors.joining(" "));
        if (!now.sound().audible() || text.isEmpty()) {
            return;
        }
        long wanted = saying.incrementAndGet();
        speaking.execute(() -> say(text, () -> false, wanted));
    }

    /**
     * Speaks, on the voice's thread; a sentence says why it could not.
     *
     * @param more whether it is said once more
     */
    private Optional<String> say(String text, BooleanSupplier more, long wanted) {
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

    // Listening

    private void sound(short[] chunk, short[] playedThen) {
        meter.hear(chunk);
        shownLevel = Math.max(meter.level(), shownLevel - FALL);
        Trial now = trial;
        if (now != null) {
            now.sound(chunk, playedThen);
        } else {
            hear(chunk).filter(utterance -> !utterance.onlyUnknown()).ifPresent(utterance -> {
                heard = new View.Heard(utterance.words(), false, "");
                on(new SetupEvent.Said(utterance.alternatives()));
            });
        }
    }

    private boolean listens() {
        Trial now = trial;
        boolean asked = now == null ? !state().now().busy() : now.listens();
        return works && ear != null && !audible && asked;
    }

    private Optional<Utterance> hear(short[] chunk) {
        Ear open = ear;
        if (open == null || audible) {
            closeListening();
            return Optional.empty();
        }
        Listening now = listening;
        if (now == null) {
            now = open.listen(vocabulary());
            listening = now;
        }
        return now.hear(chunk);
    }

    private Vocabulary vocabulary() {
        SetupState now = state();
        if (setup.takesValues(now)) {
            return grammar.vocabulary(setup.expectation(now));
        }
        List<String> phrases = new ArrayList<>();
        setup.offers(now).forEach(offer -> setup.words(offer).ifPresent(phrases::add));
        if (now.step() == Step.LEVEL && now.now().busy()) {
            phrases.addAll(Setup.TEST_PHRASES);
        }
        return Vocabulary.ofPhrases(Vocabulary.withUnknown(phrases));
    }

    private void closeListening() {
        Listening old = listening;
        listening = null;
        if (old != null) {
            old.close();
        }
    }

    // Trials

    /** Waits for the voice to have said what is asked, then begins, unless something else is asked by then. */
    private void afterSpeaking(SetupState wanted, Runnable begin) {
        speaking.execute(() -> inputs.add(() -> {
            if (state().equals(wanted)) {
                begin.run();
            }
        }));
    }

    private void levelTaken(SetupEvent.LevelTaken taken) {
        heard = new View.Heard(taken.words().orElse(""), false, "");
        on(taken);
    }

    private boolean isOffered(String words) {
        return setup.offers(state()).stream()
                .anyMatch(offer -> setup.words(offer).filter(words::equals).isPresent());
    }

    /** Speaks what it is to listen to itself by. */
    private void speakForTrial(BooleanSupplier more, Consumer<Optional<String>> ended) {
        long wanted = saying.incrementAndGet();
        speaking.execute(() -> {
            Optional<String> failure = say(language.label("setup.echo.words"), more, wanted);
            Optional<String> silenced =
                    saying.get() == wanted ? Optional.empty() : Optional.of(language.label("setup.echo.silenced"));
            inputs.add(() -> ended.accept(failure.or(() -> silenced)));
        });
    }

    /** Does what the function of setting up wants. */
    private final class Performer implements SetupEffect.Performer {

        @Override
        public void listenTo(SetupEffect.ListenTo wanted) {
            closeReader();
            FromMicrophone listener = new FromMicrophone();
            MicrophoneReader fresh = new MicrophoneReader(devices.microphone(wanted.microphone()), listener);
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

        @Override
        public void speakBy(SetupEffect.SpeakBy wanted) {
            hush();
            Loudspeaker old = loudspeaker;
            loudspeaker = new MonitoredLoudspeaker(devices.loudspeaker(wanted.loudspeaker()), played);
            if (old != null) {
                speaking.execute(old::close);
            }
        }

        @Override
        public void takeLevel() {
            CompletableFuture<Ear> ready = opening;
            if (ready == null) {
                return;
            }
            SetupState wanted = state();
            opening = ready.whenComplete((open, failure) -> inputs.add(() -> afterSpeaking(wanted, () -> {
                heard = View.Heard.NOTHING;
                taking(new LevelTrial(
                        Optional.ofNullable(failure).map(SetupRun::sentence),
                        SetupRun.this::hear,
                        SetupRun.this::isOffered,
                        words -> on(SetupEvent.Said.typed(words)),
                        SetupRun.this::levelTaken));
            })));
        }

        @Override
        public void playSentence() {
            long wanted = saying.incrementAndGet();
            speaking.execute(() -> {
                Optional<String> failure = say(language.label("setup.sentence.words"), () -> false, wanted);
                if (failure.isPresent()) {
                    // a device that just woke up may take nothing at first
                    failure = say(language.label("setup.sentence.words"), () -> false, wanted);
                }
                Optional<String> last = failure;
                inputs.add(() -> on(new SetupEvent.SentencePlayed(last)));
            });
        }

        @Override
        public void takeNoise() {
            afterSpeaking(state(), () -> taking(new NoiseTrial(SetupRun.this::on)));
        }

        @Override
        public void tryEcho() {
            afterSpeaking(state(), () -> {
                try {
                    taking(new VoiceTrial(devices.canceller(), SetupRun.this::speakForTrial, SetupRun.this::on));
                } catch (ProcessingUnavailableException e) {
                    on(new SetupEvent.EchoTried(Optional.empty(), Optional.of(String.valueOf(e.getMessage()))));
                }
            });
        }

        @Override
        public void write(SetupEffect.Write write) {
            Stored stored = store.write(write.settings());
            on(new SetupEvent.Written(stored.kept(), stored.failure()));
        }

        @Override
        public void end(SetupEffect.End end) {
            ended = Optional.of(end.next());
        }
    }

    /** Does what hands ask for. */
    private final class Hands implements Action.Performer {

        @Override
        public void utter(Action.Utter utter) {
            typed(utter.words());
        }

        @Override
        public void quiet(Action.Quiet quiet) {
            // every stroke silences
        }

        @Override
        public void talk(Action.Talk talk) {
            // it listens by itself
        }

        @Override
        public void redraw(Action.Redraw redraw) {
            // the face has done so
        }

        @Override
        public void leave(Action.Leave leave) {
            ended = Optional.of(Choice.LEAVE);
        }
    }

    /** Posts what the microphone gives. */
    private final class FromMicrophone implements MicrophoneReader.Listener {
        private volatile boolean old;

        @Override
        public void sound(short[] chunk) {
            short[] playedThen = played.next(chunk.length);
            if (inputs.size() < MOST_WAITING) {
                post(() -> SetupRun.this.sound(chunk, playedThen));
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
                on(new SetupEvent.MicrophoneLost(why));
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

    private void closeReader() {
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

    private static String sentence(Throwable failure) {
        Throwable cause = failure.getCause();
        return String.valueOf(cause == null ? failure.getMessage() : cause.getMessage());
    }

    private void close() {
        hush();
        taking(null);
        closeReader();
        closeListening();
        speaking.shutdownNow();
        try {
            if (!speaking.awaitTermination(1, TimeUnit.SECONDS)) {
                // a device that hangs; its thread ends with the process
                return;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Ear open = ear;
        if (open != null) {
            open.close();
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
