package readback.assistant.live;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import readback.assistant.dialogue.Delivery;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Turn;
import readback.assistant.ear.Ear;
import readback.assistant.echo.BargeIn;
import readback.assistant.echo.Bluetooth;
import readback.assistant.echo.EchoCanceller;
import readback.assistant.echo.MonitoredLoudspeaker;
import readback.assistant.echo.PlayedSound;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.microphone.MicrophoneReader;
import readback.assistant.probe.ProbeFeed;
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
import readback.assistant.voice.Manner;
import readback.assistant.voice.PhrasePlayer;
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
     * @param ownVoice whether Readback's own voice is taken out of what is heard
     * @param probes what instruments show that give values by themselves
     * @param standing phrases that will be wanted, in the form for the ear
     */
    public record Parts(
            Grammar grammar,
            Ear ear,
            MicrophoneFinder.Socket microphone,
            Voice voice,
            Loudspeaker loudspeaker,
            OwnVoice ownVoice,
            Face face,
            Board board,
            ScreenTexts texts,
            ProbeFeed probes,
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
    public record Settings(ListeningMode mode, boolean headset, double gate, boolean keepsSound) {}

    private final Parts parts;
    private final Settings settings;
    private final SteadyClock clock;
    private final Performer performer = new Performer();
    private final InputQueue inputs = new InputQueue();
    private final Timeouts timeouts = new Timeouts();
    private final AnswerTimes answerTimes = new AnswerTimes();
    private final EarlyResponse earlyResponse = new EarlyResponse();
    private final Welcome welcome = new Welcome();
    private final Interruption interruption = new Interruption();
    private final AudioStatus audio;
    private final PhrasePlayer player;
    private final Hearing hearing;
    private @Nullable Session session;
    private Delivery delivery = Delivery.PLAIN;
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
        this.audio = new AudioStatus(parts.texts());
        PlayedSound played = new PlayedSound();
        this.player = new PhrasePlayer(parts.voice(), new MonitoredLoudspeaker(parts.loudspeaker(), played), inputs);
        this.hearing = new Hearing(
                parts.ear(),
                settings.headset() ? player::speaking : player::audible,
                parts.ownVoice().canceller().map(canceller -> overVoice(canceller, played)),
                settings.headset(),
                settings.gate(),
                inputs::post);
        parts.ownVoice().unavailable().ifPresent(why -> audio.onlyInSilence(text("hint.no-canceller", why)));
    }

    private String text(String key, Object... values) {
        return parts.texts().of(key, values);
    }

    private Hearing.OverVoice overVoice(EchoCanceller canceller, PlayedSound played) {
        List<String> orders = parts.grammar().ordersOverVoice();
        return new Hearing.OverVoice(
                new BargeIn(parts.ear(), canceller, orders, player::isSaying, settings.gate()), played);
    }

    /** Takes a key or a touch; any thread. */
    public void strike(Stroke stroke) {
        inputs.post(new LiveInput.Struck(stroke));
    }

    /** Takes a line that was not typed on the screen; any thread. */
    public void write(String words) {
        inputs.post(new LiveInput.Written(words));
    }

    /** Redraws, perhaps at another size; any thread. */
    public void resize() {
        inputs.post(new LiveInput.Resized());
    }

    /** Ends the session; any thread. */
    public void end() {
        inputs.post(new LiveInput.Stop());
    }

    /**
     * Runs the session to its end.
     *
     * @param opener opens it with the audiences that it is given
     * @return the session, closed or left open when the program was told to stop
     */
    public Session run(Function<List<Audience>, Session> opener) {
        MicrophoneReader reader = new MicrophoneReader(parts.microphone(), new MicrophoneEvents(inputs, hearing));
        try {
            Session open = opener.apply(List.of(timeouts, parts.board(), new Speaker()));
            session = open;
            hearing.expect(parts.grammar().vocabulary(open.expectation()));
            reader.start();
            player.prepare(parts.standing());
            loop(open);
            return open;
        } finally {
            reader.close();
            hearing.close();
            player.close();
            parts.probes().close();
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
        if (audio.overruns() > 0) {
            lines.add(parts.texts().of("summary.overruns", audio.overruns()));
        }
        return lines;
    }

    private void loop(Session open) {
        Optional<Instant> deadline = Optional.empty();
        while (!stopped && !(open.closed() && !player.speaking())) {
            if (open.closed() && deadline.isEmpty()) {
                deadline = Optional.of(clock.instant().plus(LAST_WORDS));
            }
            if (deadline.isPresent() && clock.instant().isAfter(deadline.get())) {
                return;
            }
            hearing.open(settings.mode().byItself() || talking);
            measured(open);
            parts.face().show(view(open));
            nextInput().ifPresent(input -> input.reach(this));
            clock.changed().ifPresent(by -> on(new Event.ClockChanged(clock.instant(), by)));
            timeouts.over(listening(open) && !earlyResponse.speaking(), clock.instant())
                    .forEach(this::on);
            earlyResponse.due(System.nanoTime()).ifPresent(words -> prepareResponse(open, words));
            boolean someoneSpeaks = earlyResponse.speaking() || hearing.meter().open();
            welcome.due(someoneSpeaks, System.nanoTime()).ifPresent(player::say);
            interruption.due(someoneSpeaks, System.nanoTime()).ifPresent(player::say);
        }
    }

    private void measured(Session open) {
        parts.probes()
                .poll(
                        clock.instant(),
                        open.assessment().air(),
                        open.state().settings().units())
                .ifPresent(this::on);
        parts.board().showing(parts.probes().live());
    }

    private Optional<LiveInput> nextInput() {
        try {
            return inputs.next(TICK);
        } catch (InterruptedException e) {
            stopped = true;
            return Optional.empty();
        }
    }

    /** The dialogue is a pure function: what it would answer to the words so far can be made ready while they last. */
    private void prepareResponse(Session open, String words) {
        Event.Heard said =
                new Event.Heard(clock.instant(), Event.Source.VOICE, List.of(new Hypothesis(words, 1, List.of())));
        player.expect(open.foreseen(said).stream().map(Line::spoken).toList());
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
        hearing.expect(parts.grammar().vocabulary(open.expectation()));
    }

    void spoken(LiveInput.Spoken spoken) {
        long understoodAt = System.nanoTime();
        welcome.drop();
        talking = false;
        earlyResponse.partial("", understoodAt);
        if (audio.spoken(spoken.aboveNoise(), clock.instant())) {
            player.say(List.of(parts.texts().of("hint.noise.spoken")));
        }
        Session open = running();
        Event.Heard event = new Event.Heard(
                clock.instant(), Event.Source.VOICE, spoken.utterance().alternatives());
        if (keepsSound) {
            open.on(event, spoken.sound()).ifPresent(why -> {
                keepsSound = false;
                audio.soundNotKept(why);
            });
        } else {
            open.on(event);
        }
        heard = Optional.of(new Heard(spoken.endedAt(), understoodAt, System.nanoTime()));
        hearing.expect(parts.grammar().vocabulary(open.expectation()));
    }

    void partial(String words) {
        parts.board().partial(words);
        earlyResponse.partial(words, System.nanoTime());
    }

    void interrupted() {
        interruption.cut(player.hush());
    }

    /** Silences the voice for good. */
    private void hush() {
        interruption.meant();
        player.hush();
    }

    /** Half a value is worse than none: it is asked for again. */
    void beginningLost() {
        interruption.meant();
        on(new Event.Heard(clock.instant(), Event.Source.VOICE, List.of(new Hypothesis(Ear.UNKNOWN, 0, List.of()))));
        player.say(List.of(parts.texts().of("hint.again.spoken")));
    }

    void echoTooStrong() {
        audio.onlyInSilence(text("hint.echo"));
    }

    void microphoneFound(String device) {
        if (Bluetooth.named(device) || Bluetooth.named(parts.loudspeaker().name())) {
            hearing.onlyInSilence();
            parts.ownVoice().canceller().ifPresent(lost -> audio.onlyInSilence(text("hint.bluetooth")));
        }
        if (audio.microphoneFound(device)) {
            on(new Event.DeviceFound(clock.instant(), MICROPHONE));
        }
    }

    void microphoneLost(String why) {
        audio.microphoneLost(why);
        talking = false;
        // What was being said when the microphone went is taken as far as it got.
        hearing.finish();
        on(new Event.DeviceLost(clock.instant(), MICROPHONE));
    }

    void overrun() {
        audio.overrun();
    }

    void voiceStarted(long at) {
        audio.voiceWorks();
        heard.ifPresent(last -> answerTimes.add(last.endedAt(), last.understoodAt(), last.decidedAt(), at));
        heard = Optional.empty();
    }

    void voiceEnded() {
        heard = Optional.empty();
    }

    void voiceFailed(String why) {
        audio.voiceFailed(why);
    }

    /** A hand on the tablet wants to be heard: whatever it strikes silences the voice. */
    void struck(Stroke stroke) {
        hush();
        parts.face().on(stroke).ifPresent(this::act);
    }

    void written(String words) {
        act(new Action.Utter(words));
    }

    private void act(Action action) {
        welcome.drop();
        action.performedBy(performer);
    }

    /** Does what the hands ask for. */
    private final class Performer implements Action.Performer {

        @Override
        public void utter(Action.Utter utter) {
            LiveSession.this.hush();
            on(new Event.Heard(clock.instant(), Event.Source.KEYS, List.of(Hypothesis.typed(utter.words()))));
        }

        @Override
        public void quiet(Action.Quiet quiet) {
            LiveSession.this.hush();
        }

        @Override
        public void talk(Action.Talk talk) {
            LiveSession.this.talk();
        }

        @Override
        public void redraw(Action.Redraw redraw) {
            // the face has done so
        }

        @Override
        public void leave(Action.Leave leave) {
            stop();
        }
    }

    /** Silences the voice; ends what is being said; opens the ear where it does not open by itself. */
    private void talk() {
        hush();
        if (earlyResponse.speaking()) {
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
        return audio.microphoneWorks()
                && (settings.mode().byItself() || talking)
                && (settings.headset() || !player.audible())
                && !open.closed();
    }

    private View view(Session open) {
        View.Status status = audio.status(hearing.meter().level(), listening(open), player.name(), player.speaking());
        return parts.board().view(open, status, timeouts.shown(clock.instant()), audio.hint());
    }

    /** Speaks what a turn says. */
    private final class Speaker implements Audience {
        @Override
        public void happened(Event event, Turn turn) {
            Delivery wanted = turn.state().settings().delivery();
            if (!wanted.equals(delivery)) {
                delivery = wanted;
                player.speaking(Manner.percent(wanted.volume(), wanted.speed()));
                player.prepare(parts.standing());
            }
        }

        @Override
        public void says(List<Line> lines) {
            interruption.meant();
            List<String> texts = lines.stream().map(Line::spoken).toList();
            if (session == null && !settings.headset()) {
                player.expect(texts);
                welcome.hold(texts);
            } else {
                player.say(texts);
            }
        }

        @Override
        public void hush() {
            LiveSession.this.hush();
        }
    }
}
