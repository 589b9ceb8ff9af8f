package readback.assistant.live;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import readback.assistant.dialogue.Event;
import readback.assistant.ear.Ear;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.microphone.MicrophoneReader;
import readback.assistant.screen.Action;
import readback.assistant.screen.Board;
import readback.assistant.screen.Face;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.Stroke;
import readback.assistant.screen.View;
import readback.assistant.session.Audience;
import readback.assistant.session.Line;
import readback.assistant.session.Session;
import readback.assistant.session.SteadyClock;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.Mouth;
import readback.assistant.voice.Voice;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;

/**
 * Runs a session with a technician: whoever calls {@link #run} becomes the one thread that owns session, screen and
 * timers. Microphone, ear, voice and keys each have a thread of their own and only post inputs, so none of them ever
 * blocks the dialogue.
 */
public final class LiveSession {

    /** What the dialogue calls the microphone. */
    private static final String MICROPHONE = "microphone";

    /** How often level meter and timers are looked at. */
    private static final Duration TICK = Duration.ofMillis(100);

    /** The last answer is spoken to its end, but not longer than this. */
    private static final Duration LAST_WORDS = Duration.ofSeconds(30);

    /**
     * What the session lives with. All of it is closed by {@link #run}, except the face.
     *
     * @param standing phrases that will be wanted, in the form for the ear
     */
    public record Parts(
            Grammar grammar,
            Ear ear,
            MicrophoneFinder.Socket microphone,
            Voice voice,
            Loudspeaker loudspeaker,
            Face face,
            Board board,
            ScreenTexts texts,
            List<String> standing) {
        public Parts {
            standing = List.copyOf(standing);
        }
    }

    /**
     * How it listens and speaks.
     *
     * @param headset whether listening goes on while Readback speaks, because the microphone does not hear it
     * @param gate level in decibels of full scale below which nothing is speech
     * @param keepsSound whether the sound of each utterance goes into the record, as far as its budget allows
     */
    public record Settings(ListeningMode mode, boolean headset, double gate, Mouth.Manner manner, boolean keepsSound) {}

    private final Parts parts;
    private final Settings settings;
    private final SteadyClock clock;
    private final BlockingQueue<LiveInput> inputs = new LinkedBlockingQueue<>();
    private final Timeouts waits = new Timeouts();
    private final AnswerTimes answerTimes = new AnswerTimes();
    private final EarlyResponse foresight = new EarlyResponse();
    private final Welcome welcome = new Welcome();
    private final AudioStatus condition;
    private final Mouth mouth;
    private final Hearing hearing;
    private @Nullable Session session;
    private boolean keepsSound;
    private boolean talking;
    private Optional<Heard> heard = Optional.empty();
    private boolean stopped;

    /** The last words that wait for the first sound of their answer; times as {@link System#nanoTime} tells them. */
    private record Heard(long endedAt, long understoodAt, long decidedAt) {}

    public LiveSession(Parts parts, Settings settings, SteadyClock clock) {
        this.parts = parts;
        this.settings = settings;
        this.clock = clock;
        this.keepsSound = settings.keepsSound();
        this.condition = new AudioStatus(parts.texts());
        this.mouth = new Mouth(parts.voice(), parts.loudspeaker(), settings.manner(), new VoiceEvents());
        this.hearing = new Hearing(
                parts.ear(),
                settings.headset() ? mouth::speaking : mouth::audible,
                settings.headset(),
                settings.gate(),
                inputs::add);
    }

    /** Takes a key or a touch; any thread. */
    public void strike(Stroke stroke) {
        inputs.add(new LiveInput.Struck(stroke));
    }

    /** Takes a line that was not typed on the screen; any thread. */
    public void write(String words) {
        inputs.add(new LiveInput.Written(words));
    }

    /** Redraws, perhaps at another size; any thread. */
    public void resize() {
        inputs.add(new LiveInput.Resized());
    }

    /** Ends the session; any thread. */
    public void end() {
        inputs.add(new LiveInput.Stop());
    }

    /**
     * Runs the session to its end.
     *
     * @param opener opens it with the audiences that it is given
     * @return the session, closed or left open when the program was told to stop
     */
    public Session run(Function<List<Audience>, Session> opener) {
        MicrophoneReader reader = new MicrophoneReader(parts.microphone(), new MicrophoneEvents());
        try {
            Session open = opener.apply(List.of(waits, parts.board(), new Speaker()));
            session = open;
            hearing.expect(parts.grammar().vocabulary(open.expectation()).phrases());
            reader.start();
            mouth.prepare(parts.standing());
            loop(open);
            return open;
        } finally {
            reader.close();
            hearing.close();
            mouth.close();
        }
    }

    /** How many pieces of sound wait for the ear, for callers that feed it sound faster than real time; any thread. */
    int soundWaiting() {
        return hearing.waiting();
    }

    /** How quickly answers came and how often sound was lost, in lines; none when there is nothing to tell. */
    public List<String> summary() {
        List<String> lines = new ArrayList<>();
        if (answerTimes.count() > 0) {
            lines.add(answerTimes.summary());
        }
        if (condition.overruns() > 0) {
            lines.add(parts.texts().of("summary.overruns", condition.overruns()));
        }
        return lines;
    }

    private void loop(Session open) {
        Optional<Instant> deadline = Optional.empty();
        while (!stopped && !(open.closed() && !mouth.speaking())) {
            if (open.closed() && deadline.isEmpty()) {
                deadline = Optional.of(clock.instant().plus(LAST_WORDS));
            }
            if (deadline.isPresent() && clock.instant().isAfter(deadline.get())) {
                return;
            }
            hearing.open(settings.mode().byItself() || talking);
            parts.face().show(view(open));
            next().ifPresent(input -> input.reach(this));
            clock.changed().ifPresent(by -> on(new Event.ClockChanged(clock.instant(), by)));
            waits.over(listening(open) && !foresight.speaking(), clock.instant())
                    .forEach(this::on);
            foresight.due(System.nanoTime()).ifPresent(words -> foresee(open, words));
            boolean someoneSpeaks = foresight.speaking() || hearing.meter().open();
            welcome.due(someoneSpeaks, System.nanoTime()).ifPresent(mouth::say);
        }
    }

    private Optional<LiveInput> next() {
        try {
            return Optional.ofNullable(inputs.poll(TICK.toMillis(), TimeUnit.MILLISECONDS));
        } catch (InterruptedException e) {
            stopped = true;
            return Optional.empty();
        }
    }

    /** The dialogue is a pure function: what it would answer to the words so far can be made ready while they last. */
    private void foresee(Session open, String words) {
        Event.Heard said =
                new Event.Heard(clock.instant(), Event.Source.VOICE, List.of(new Hypothesis(words, 1, List.of())));
        mouth.expect(open.foreseen(said).stream().map(Line::spoken).toList());
    }

    private Session running() {
        Session open = session;
        if (open == null) {
            throw new IllegalStateException("inputs are taken only while the session runs");
        }
        return open;
    }

    private void on(Event event) {
        Session open = running();
        open.on(event);
        hearing.expect(parts.grammar().vocabulary(open.expectation()).phrases());
    }

    void spoken(LiveInput.Spoken spoken) {
        long understoodAt = System.nanoTime();
        welcome.drop();
        talking = false;
        foresight.partial("", understoodAt);
        if (condition.spoken(spoken.aboveNoise(), clock.instant())) {
            mouth.say(List.of(parts.texts().of("hint.noise.spoken")));
        }
        Session open = running();
        Event.Heard event = new Event.Heard(
                clock.instant(), Event.Source.VOICE, spoken.utterance().alternatives());
        if (keepsSound) {
            open.on(event, spoken.sound()).ifPresent(why -> {
                keepsSound = false;
                condition.soundNotKept(why);
            });
        } else {
            open.on(event);
        }
        heard = Optional.of(new Heard(spoken.endedAt(), understoodAt, System.nanoTime()));
        hearing.expect(parts.grammar().vocabulary(open.expectation()).phrases());
    }

    void partial(String words) {
        parts.board().partial(words);
        foresight.partial(words, System.nanoTime());
    }

    void interrupted() {
        mouth.hush();
    }

    void microphoneFound(String device) {
        if (condition.microphoneFound(device)) {
            on(new Event.DeviceFound(clock.instant(), MICROPHONE));
        }
    }

    void microphoneLost(String why) {
        condition.microphoneLost(why);
        talking = false;
        // What was being said when the microphone went is taken as far as it got.
        hearing.finish();
        on(new Event.DeviceLost(clock.instant(), MICROPHONE));
    }

    void overrun() {
        condition.overrun();
    }

    void voiceStarted(long at) {
        condition.voiceWorks();
        heard.ifPresent(last -> answerTimes.add(last.endedAt(), last.understoodAt(), last.decidedAt(), at));
        heard = Optional.empty();
    }

    void voiceEnded() {
        heard = Optional.empty();
    }

    void voiceFailed(String why) {
        condition.voiceFailed(why);
    }

    void struck(Stroke stroke) {
        parts.face().on(stroke).ifPresent(this::act);
    }

    void written(String words) {
        act(new Action.Utter(words));
    }

    private void act(Action action) {
        welcome.drop();
        if (action instanceof Action.Utter utter) {
            mouth.hush();
            on(new Event.Heard(clock.instant(), Event.Source.KEYS, List.of(Hypothesis.typed(utter.words()))));
        } else if (action instanceof Action.Quiet) {
            mouth.hush();
        } else if (action instanceof Action.Talk) {
            talk();
        } else if (action instanceof Action.Leave) {
            stop();
        }
    }

    /** Silences the voice; ends what is being said; opens the ear where it does not open by itself. */
    private void talk() {
        mouth.hush();
        if (foresight.speaking()) {
            hearing.finish();
            talking = false;
        } else if (settings.mode() == ListeningMode.KEY) {
            talking = !talking;
        }
    }

    void resized() {
        parts.face().renew();
    }

    void stop() {
        stopped = true;
    }

    private boolean listening(Session open) {
        return condition.microphoneWorks()
                && (settings.mode().byItself() || talking)
                && (settings.headset() || !mouth.audible())
                && !open.closed();
    }

    private View view(Session open) {
        View.Status status = condition.status(hearing.meter().level(), listening(open), mouth.name(), mouth.speaking());
        return parts.board().view(open, status, waits.shown(clock.instant()), condition.hint());
    }

    /** Speaks what a turn says. */
    private final class Speaker implements Audience {
        @Override
        public void says(List<Line> lines) {
            List<String> texts = lines.stream().map(Line::spoken).toList();
            if (session == null && !settings.headset()) {
                mouth.expect(texts);
                welcome.hold(texts);
            } else {
                mouth.say(texts);
            }
        }

        @Override
        public void hush() {
            mouth.hush();
        }
    }

    /** Called on the playing thread. */
    private final class VoiceEvents implements Mouth.Listener {
        @Override
        public void started() {
            inputs.add(new LiveInput.VoiceStarted(System.nanoTime()));
        }

        @Override
        public void ended() {
            inputs.add(new LiveInput.VoiceEnded());
        }

        @Override
        public void failed(String why) {
            inputs.add(new LiveInput.VoiceFailed(why));
        }
    }

    /** Called on the microphone's thread. */
    private final class MicrophoneEvents implements MicrophoneReader.Listener {
        @Override
        public void sound(short[] chunk) {
            if (!hearing.sound(chunk)) {
                inputs.add(new LiveInput.Overrun());
            }
        }

        @Override
        public void found(String device) {
            inputs.add(new LiveInput.MicrophoneFound(device));
        }

        @Override
        public void lost(String why) {
            inputs.add(new LiveInput.MicrophoneLost(why));
        }

        @Override
        public void overrun(long count) {
            inputs.add(new LiveInput.Overrun());
        }
    }
}
