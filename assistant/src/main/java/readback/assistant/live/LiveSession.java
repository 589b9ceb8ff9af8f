package readback.assistant.live;

import java.time.Clock;
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
import readback.assistant.dialogue.Effect;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;
import readback.assistant.ear.Ear;
import readback.assistant.microphone.MicrophoneReader;
import readback.assistant.microphone.Microphones;
import readback.assistant.screen.Action;
import readback.assistant.screen.Board;
import readback.assistant.screen.Face;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.Stroke;
import readback.assistant.screen.View;
import readback.assistant.session.Audience;
import readback.assistant.session.Line;
import readback.assistant.session.Session;
import readback.assistant.session.Timers;
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

    /** Words that stood still for so long may be all that is said; the answer to them is made ready. */
    private static final Duration STEADY = Duration.ofMillis(80);

    /** The last answer is spoken to its end, but not longer than this. */
    private static final Duration LAST_WORDS = Duration.ofSeconds(30);

    /** The quietest level on the meter, in decibels of full scale. */
    private static final double METER_FLOOR = -60;

    /**
     * What the session lives with. All of it is closed by {@link #run}, except the face.
     *
     * @param standing phrases that will be wanted, in the form for the ear
     */
    public record Parts(
            Grammar grammar,
            Ear ear,
            Microphones.Socket microphone,
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
     */
    public record Settings(ListeningMode mode, boolean headset, double gate, Mouth.Manner manner) {}

    private final Parts parts;
    private final Settings settings;
    private final Clock clock;
    private final BlockingQueue<LiveInput> inputs = new LinkedBlockingQueue<>();
    private final Timers timers = new Timers();
    private final AnswerTimes answerTimes = new AnswerTimes();
    private final NoiseWatch noise = new NoiseWatch();
    private final Mouth mouth;
    private final Hearing hearing;
    private @Nullable Session session;
    private String microphone = "";
    private boolean microphoneWorks;
    private boolean microphoneMissed;
    private long overruns;
    private String trouble = "";
    private boolean voiceFails;
    private boolean talking;
    private String partial = "";
    private long partialAt;
    private boolean foreseen = true;
    private Optional<Long> spokenUntil = Optional.empty();
    private boolean stopped;

    public LiveSession(Parts parts, Settings settings, Clock clock) {
        this.parts = parts;
        this.settings = settings;
        this.clock = clock;
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

    /** Takes a line that was typed elsewhere than on the screen; any thread. */
    public void write(String words) {
        inputs.add(new LiveInput.Written(words));
    }

    /** Draws anew, in another size perhaps; any thread. */
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
            Session open = opener.apply(List.of(parts.board(), new Follower()));
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

    /** How quickly answers came, in one line; empty when nothing was answered by voice. */
    public Optional<String> summary() {
        return answerTimes.count() == 0 ? Optional.empty() : Optional.of(answerTimes.summary());
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
            Instant now = clock.instant();
            timers.elapsed(now).forEach(timer -> on(new Event.TimerElapsed(now, timer)));
            foresee(open);
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
    private void foresee(Session open) {
        if (!foreseen && System.nanoTime() - partialAt >= STEADY.toNanos()) {
            foreseen = true;
            Event.Heard heard = new Event.Heard(
                    clock.instant(), Event.Source.VOICE, List.of(new Hypothesis(partial, 1, List.of())));
            mouth.expect(open.foreseen(heard).stream().map(Line::spoken).toList());
        }
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
        talking = false;
        partial = "";
        foreseen = true;
        if (noise.heard(spoken.aboveNoise(), clock.instant())) {
            mouth.say(List.of(parts.texts().of("hint.noise.spoken")));
        }
        spokenUntil = Optional.of(spoken.endedAt());
        on(new Event.Heard(
                clock.instant(), Event.Source.VOICE, spoken.utterance().alternatives()));
    }

    void partial(String words) {
        parts.board().partial(words);
        partial = words;
        partialAt = System.nanoTime();
        foreseen = words.isBlank();
    }

    void interrupted() {
        mouth.hush();
    }

    void microphoneFound(String device) {
        microphone = device;
        microphoneWorks = true;
        trouble = "";
        if (microphoneMissed) {
            microphoneMissed = false;
            on(new Event.DeviceFound(clock.instant(), MICROPHONE));
        }
    }

    void microphoneLost(String why) {
        microphoneWorks = false;
        microphoneMissed = true;
        talking = false;
        trouble = parts.texts().of("hint.microphone", why);
        // What was being said when it went is taken as far as it came.
        hearing.finish();
        on(new Event.DeviceLost(clock.instant(), MICROPHONE));
    }

    void overrun() {
        overruns++;
    }

    void voiceStarted(long at) {
        voiceFails = false;
        spokenUntil.ifPresent(until -> answerTimes.add((at - until) / 1e9));
        spokenUntil = Optional.empty();
    }

    void voiceEnded() {
        spokenUntil = Optional.empty();
    }

    void voiceFailed(String why) {
        voiceFails = true;
        trouble = parts.texts().of("hint.voice", why);
    }

    void struck(Stroke stroke) {
        parts.face().on(stroke).ifPresent(this::act);
    }

    void written(String words) {
        act(new Action.Utter(words));
    }

    private void act(Action action) {
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
        if (!partial.isBlank()) {
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

    private View view(Session open) {
        Hearing.Meter meter = hearing.meter();
        boolean listening = microphoneWorks
                && (settings.mode().byItself() || talking)
                && (settings.headset() || !mouth.audible())
                && !open.closed();
        int level = (int) Math.round((meter.level() - METER_FLOOR) / -METER_FLOOR * View.Status.LEVELS);
        String voice = parts.texts()
                .of(
                        voiceFails
                                ? "status.voice.none"
                                : mouth.speaking() ? "status.voice.speaking" : "status.voice.silent",
                        mouth.name());
        View.Status status = new View.Status(
                microphone,
                microphoneWorks,
                listening,
                microphoneWorks ? Math.max(0, Math.min(View.Status.LEVELS, level)) : 0,
                overruns,
                voice);
        String hint =
                !trouble.isEmpty() ? trouble : noise.loud() ? parts.texts().of("hint.noise") : "";
        return parts.board().view(open, status, timers(), hint);
    }

    private List<String> timers() {
        List<String> shown = new ArrayList<>();
        timers.left(clock.instant()).forEach((timer, left) -> {
            // Part of another timer: a reminder, say.
            if (timer.contains(".")) {
                return;
            }
            long seconds = Math.max(0, left.toSeconds());
            shown.add(timer.replace('-', ' ') + String.format(" %d:%02d", seconds / 60, seconds % 60));
        });
        return shown;
    }

    /** Carries out what a turn wants done outside. */
    private final class Follower implements Audience {
        @Override
        public void happened(Event event, Turn turn) {
            for (Effect effect : turn.effects()) {
                if (effect instanceof Effect.StartTimer timer) {
                    timers.start(timer.timer(), clock.instant(), timer.duration());
                } else if (effect instanceof Effect.StopTimer timer) {
                    timers.stop(timer.timer());
                }
            }
        }

        @Override
        public void says(List<Line> lines) {
            mouth.say(lines.stream().map(Line::spoken).toList());
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
