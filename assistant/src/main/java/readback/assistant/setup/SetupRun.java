package readback.assistant.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import readback.assistant.ear.Ear;
import readback.assistant.ear.EarUnavailableException;
import readback.assistant.ear.Utterance;
import readback.assistant.echo.EchoCanceller;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.screen.Action;
import readback.assistant.screen.Face;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.Stroke;
import readback.assistant.screen.View;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceFailedException;
import readback.assistant.webrtc.ProcessingUnavailableException;
import readback.grammar.Grammar;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/**
 * Sets a tablet up with its microphone ({@link SetupEar}), voice ({@link SetupVoice}) and screen: whoever calls
 * {@link #run} becomes the one thread that owns state, ear and face. Microphone, voice and keys each have a thread of
 * their own and only post inputs.
 */
public final class SetupRun {

    /** How often the level is shown anew. */
    private static final long TICK_MILLIS = 100;

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
    private final Language language;
    private final Devices devices;
    private final Store store;
    private final Face face;
    private final BlockingQueue<Runnable> inputs = new LinkedBlockingQueue<>();
    private final SetupVoice voice;
    private final SetupEar ear;
    private final Performer performer = new Performer();
    private final Hands hands = new Hands();
    private @Nullable SetupState state;
    private @Nullable Trial trial;
    private View.Heard heard = View.Heard.NOTHING;
    private Optional<Choice> ended = Optional.empty();
    private final CompletableFuture<Boolean> over = new CompletableFuture<>();

    public SetupRun(Grammar grammar, Language language, Devices devices, Store store, Face face) {
        this.setup = new Setup(grammar, language);
        this.board = new SetupBoard(setup, language, ScreenTexts.ofSetup(language));
        this.language = language;
        this.devices = devices;
        this.store = store;
        this.face = face;
        this.voice = new SetupVoice(language, devices);
        this.ear = new SetupEar(devices, voice.played(), inputs, new Hearing());
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
        face.show(board.view(
                state(),
                new SetupBoard.Devices(ear.works(), listens(), ear.level(), voice.name(), voice.audible(), heard)));
    }

    // Inputs, from any thread

    /** A key was struck, or the screen touched. */
    public void strike(Stroke stroke) {
        inputs.add(() -> {
            voice.hush();
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
        voice.hush();
        heard = new View.Heard(words, false, "");
        on(SetupEvent.Said.typed(words));
    }

    private void on(SetupEvent event) {
        apply(setup.on(state(), event));
    }

    private void apply(Turn turn) {
        boolean same = turn.state().equals(state);
        state = turn.state();
        if (!state().now().busy()) {
            taking(null);
        }
        if (!same) {
            ear.forget();
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

    /** Says what is told and asked, once somebody is known to hear it. */
    private void speak(SetupState now) {
        List<Message> messages = new ArrayList<>(now.now().told());
        messages.add(setup.question(now));
        String text = messages.stream()
                .map(message -> language.wording()
                        .spoken(message, false, now.decisions().units()))
                .filter(spoken -> !spoken.isBlank())
                .collect(Collectors.joining(" "));
        if (now.sound().audible() && !text.isEmpty()) {
            voice.say(text);
        }
    }

    private boolean listens() {
        Trial now = trial;
        boolean asked = now == null ? !state().now().busy() : now.listens();
        return ear.understands() && !voice.audible() && asked;
    }

    /** What was understood; nothing while it speaks itself. */
    private Optional<Utterance> hear(short[] chunk) {
        if (voice.audible()) {
            ear.forget();
            return Optional.empty();
        }
        return ear.hear(chunk, () -> setup.vocabulary(state()));
    }

    /** Takes sound for the trial that goes on, else for what is asked. */
    private final class Hearing implements SetupEar.Hearer {

        @Override
        public void sound(short[] chunk, short[] playedThen) {
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

        @Override
        public void lost(String why) {
            on(new SetupEvent.MicrophoneLost(why));
        }
    }

    /** Does what the function of setting up wants. */
    private final class Performer implements SetupEffect.Performer {

        @Override
        public void listenTo(SetupEffect.ListenTo wanted) {
            ear.listenTo(wanted.microphone());
        }

        @Override
        public void speakBy(SetupEffect.SpeakBy wanted) {
            voice.by(devices.loudspeaker(wanted.loudspeaker()));
        }

        @Override
        public void takeLevel() {
            SetupState wanted = state();
            ear.whenOpen(deaf -> afterSpeaking(wanted, () -> {
                heard = View.Heard.NOTHING;
                taking(new LevelTrial(
                        deaf,
                        SetupRun.this::hear,
                        words -> setup.isOffered(state(), words),
                        words -> on(SetupEvent.Said.typed(words)),
                        this::levelTaken));
            }));
        }

        private void levelTaken(SetupEvent.LevelTaken taken) {
            heard = new View.Heard(taken.words().orElse(""), false, "");
            on(taken);
        }

        @Override
        public void playSentence() {
            voice.test(
                    language.label("setup.sentence.words"),
                    failure -> inputs.add(() -> on(new SetupEvent.SentencePlayed(failure))));
        }

        @Override
        public void takeNoise() {
            afterSpeaking(state(), () -> taking(new NoiseTrial(SetupRun.this::on)));
        }

        @Override
        public void tryEcho() {
            afterSpeaking(state(), () -> {
                try {
                    taking(new VoiceTrial(devices.canceller(), this::speakForTrial, SetupRun.this::on));
                } catch (ProcessingUnavailableException e) {
                    on(new SetupEvent.EchoTried(Optional.empty(), Optional.of(String.valueOf(e.getMessage()))));
                }
            });
        }

        /** Speaks what it is to listen to itself by. */
        private void speakForTrial(BooleanSupplier more, Consumer<Optional<String>> ended) {
            voice.listenedTo(
                    language.label("setup.echo.words"), more, failure -> inputs.add(() -> ended.accept(failure)));
        }

        /** Waits for the voice to have said what is asked, then begins, unless something else is asked by then. */
        private void afterSpeaking(SetupState wanted, Runnable begin) {
            voice.afterwards(() -> inputs.add(() -> {
                if (state().equals(wanted)) {
                    begin.run();
                }
            }));
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

    private void close() {
        voice.hush();
        taking(null);
        ear.close();
        voice.close();
    }
}
