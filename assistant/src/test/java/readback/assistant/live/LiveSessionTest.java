package readback.assistant.live;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Probe;
import readback.assistant.dialogue.ProbeReport;
import readback.assistant.dialogue.ProbeValue;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.ear.Ear;
import readback.assistant.ear.ScriptedEar;
import readback.assistant.echo.EchoCanceller;
import readback.assistant.microphone.Microphone;
import readback.assistant.microphone.MicrophoneLostException;
import readback.assistant.probe.ProbeFeed;
import readback.assistant.record.AudioBudget;
import readback.assistant.record.Entry;
import readback.assistant.record.Header;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RecordedSession.KeptSound;
import readback.assistant.record.SessionRecord;
import readback.assistant.screen.Action;
import readback.assistant.screen.Board;
import readback.assistant.screen.Face;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.Stroke;
import readback.assistant.screen.View;
import readback.assistant.session.Audience;
import readback.assistant.session.Session;
import readback.assistant.session.SteadyClock;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.Voice;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Language;

/** The real dialogue, with an ear that hears a script when there is loud sound, and a microphone that can be pulled. */
class LiveSessionTest {
    private static final int CHUNK = Microphone.RATE / 50;

    @TempDir
    Path folder;

    private final BlockingQueue<View> views = new LinkedBlockingQueue<>();
    private final BlockingQueue<Optional<short[]>> sound = new LinkedBlockingQueue<>();
    private final BlockingQueue<Action> actions = new LinkedBlockingQueue<>();
    private final BlockingQueue<String> played = new LinkedBlockingQueue<>();
    private final Dialogue dialogue = new Dialogue(Grammar.standard(), Checklists.standard());
    private final Ahead clock = new Ahead();
    private volatile long overruns;
    private final Shown shown = new Shown();
    private final BlockingQueue<Integer> loudness = new LinkedBlockingQueue<>();
    private String microphone = "pulled";
    private OwnVoice ownVoice = OwnVoice.LEFT_IN;
    private List<String> script = List.of("four ten a", "piston");
    private boolean headset;
    /** Whether what is played lasts until it is silenced. */
    private volatile boolean endless;

    private SessionRecord record;
    private LiveSession live;
    private CompletableFuture<Session> running;

    @BeforeEach
    void open() throws RecordUnavailableException {
        record = SessionRecord.create(folder, new Header("test", Instant.EPOCH, "test", Map.of(), Map.of()));
        start(
                false,
                audiences -> Session.open(
                        dialogue,
                        Language.english().wording(),
                        record,
                        audiences,
                        SessionSettings.STANDARD,
                        Instant.parse("2026-07-01T12:00:00Z")));
    }

    private void start(boolean keepsSound, Function<List<Audience>, Session> opener) {
        Grammar grammar = Grammar.standard();
        Checklists checklists = Checklists.standard();
        ScreenTexts texts = new ScreenTexts(Language.english());
        live = new LiveSession(
                new LiveSession.Parts(
                        grammar,
                        new ScriptedEar(script, List.of()),
                        Pulled::new,
                        new Quick(),
                        new Silent(),
                        ownVoice,
                        new Watched(),
                        new Board(grammar, checklists, Language.english(), SessionSettings.STANDARD.units()),
                        texts,
                        shown,
                        List.of()),
                new LiveSession.Settings(ListeningMode.OPEN, headset, -55, keepsSound),
                SteadyClock.from(
                        clock,
                        () -> Duration.between(Instant.EPOCH, clock.instant()).toNanos()));
        running = CompletableFuture.supplyAsync(() -> live.run(opener));
    }

    /** Ends the session without closing it, as an empty battery does, and resumes it from its record. */
    private void resume(boolean keepsSound, AudioBudget budget) throws RecordUnavailableException {
        live.end();
        running.join();
        record.close();
        views.clear();
        SessionRecord.Resumption resumption = SessionRecord.resume(folder.resolve("test"));
        record = resumption.record();
        record.keepAudio(budget);
        start(
                keepsSound,
                audiences ->
                        Session.resume(dialogue, Language.english().wording(), resumption, audiences, clock.instant()));
    }

    @AfterEach
    void close() {
        live.end();
        running.join();
        record.close();
    }

    /** Probes that show what the test wants. */
    private static final class Shown implements ProbeFeed {
        private final BlockingQueue<ProbeReport> news = new LinkedBlockingQueue<>();
        private List<ProbeReport> live = List.of();
        private volatile boolean closed;

        @Override
        public Optional<Event.Measured> poll(Instant now, AbsolutePressure air, UnitSetting units) {
            ProbeReport report = news.poll();
            if (report == null) {
                return Optional.empty();
            }
            live = List.of(report);
            return Optional.of(new Event.Measured(now, live));
        }

        @Override
        public List<ProbeReport> live() {
            return live;
        }

        @Override
        public void close() {
            closed = true;
        }
    }

    @Test
    void what_a_probe_offers_is_shown_and_taken_by_a_touch() throws InterruptedException {
        for (String words : List.of("four ten a", "piston", "understood", "yes", "yes", "outdoor 95", "wet bulb 67")) {
            live.write(words);
        }
        await(view -> view.question().startsWith("Suction pressure"));
        shown.news.add(new ProbeReport(
                new Probe(1, "gauge", Dimension.GAUGE_PRESSURE, Optional.of(Quantity.SUCTION_PRESSURE)),
                ProbeReport.Quality.STEADY,
                Optional.of(new ProbeValue(new BigDecimal("118.2"), Unit.PSIG, "118.2 psi(g)", Instant.EPOCH))));
        View offered = await(view -> !view.options().isEmpty());

        assertThat(offered.probes())
                .containsExactly(new View.Row("Probe 1, suction pressure", "118.2 psig", "offered"));
        assertThat(offered.question()).as("the question stays").startsWith("Suction pressure");
        live.write(offered.options().get(0).words());
        await(view -> view.readings().contains(new View.Row("suction pressure", "118.2 psig", "")));

        live.end();
        running.join();
        assertThat(shown.closed).isTrue();
    }

    /** The true time and as much more as the test wants. */
    private static final class Ahead extends Clock {
        private volatile Duration by = Duration.ZERO;

        @Override
        public Instant instant() {
            return Instant.now().plus(by);
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

    /** Gives what the test offers, silence while it offers nothing, and is lost on an empty offer. */
    private final class Pulled implements Microphone {
        @Override
        public String name() {
            return microphone;
        }

        @Override
        public short[] read() throws MicrophoneLostException {
            try {
                Optional<short[]> next = sound.poll(5, TimeUnit.MILLISECONDS);
                if (next != null && next.isEmpty()) {
                    throw new MicrophoneLostException("The microphone 'pulled' gives no sound any more.");
                }
                return next == null ? new short[CHUNK] : next.get();
            } catch (InterruptedException e) {
                throw new MicrophoneLostException("The test is over.", e);
            }
        }

        @Override
        public long overruns() {
            return overruns;
        }

        @Override
        public void close() {}
    }

    /** Takes nothing out. */
    private static final class Nothing implements EchoCanceller {
        @Override
        public short[] cancel(short[] heard, short[] played) {
            return heard;
        }

        @Override
        public void close() {}
    }

    private static final class Quick implements Voice {
        @Override
        public String name() {
            return "quick";
        }

        @Override
        public Samples speak(String text) {
            short[] loud = new short[CHUNK];
            Arrays.fill(loud, (short) 8000);
            return Samples.of(loud, Microphone.RATE);
        }

        @Override
        public void close() {}
    }

    private final class Silent implements Loudspeaker {
        @Override
        public String name() {
            return "silent";
        }

        @Override
        public void play(Samples sound, BooleanSupplier stop) {
            loudness.add((int) sound.pcm()[sound.length() - 1]);
            while (endless && !stop.getAsBoolean()) {
                Thread.onSpinWait();
            }
            played.add(stop.getAsBoolean() ? "stopped" : "played");
        }

        @Override
        public void close() {}
    }

    private final class Watched implements Face {
        @Override
        public void show(View view) {
            views.add(view);
        }

        @Override
        public Optional<Action> on(Stroke stroke) {
            return Optional.ofNullable(actions.poll());
        }

        @Override
        public void renew() {}

        @Override
        public void close() {}
    }

    private View await(Predicate<View> wanted) throws InterruptedException {
        View last = null;
        for (int i = 0; i < 1000; i++) {
            View next = views.poll(10, TimeUnit.SECONDS);
            if (next == null) {
                break;
            }
            last = next;
            if (wanted.test(last)) {
                return last;
            }
        }
        throw new AssertionError("not seen; at last: " + last);
    }

    private static boolean listening(View view) {
        return view.status().listening();
    }

    private static boolean has(View view, String value) {
        return view.readings().stream().anyMatch(row -> row.value().equals(value));
    }

    /** Loud sound after a little quiet, which a level needs to tell the one from the other. */
    private void loud(double seconds) {
        for (int chunk = 0; chunk < 10; chunk++) {
            sound.add(Optional.of(new short[CHUNK]));
        }
        for (int chunk = 0; chunk < Math.round(seconds * 50); chunk++) {
            short[] tone = new short[CHUNK];
            for (int i = 0; i < CHUNK; i++) {
                tone[i] = (short) (9000 * Math.sin(2 * Math.PI * 300 * i / Microphone.RATE));
            }
            sound.add(Optional.of(tone));
        }
    }

    private void act(Action action) {
        actions.add(action);
        live.strike(new Stroke.Pressed(Stroke.Key.ENTER));
    }

    @Test
    void whatIsSaidIsHeardUnderstoodAndShown() throws InterruptedException {
        await(LiveSessionTest::listening);

        loud(0.6);

        View partial = await(view -> view.heard().partial());
        assertThat(partial.heard().words()).isEqualTo("four ten a");
        View understood = await(view -> has(view, "R-410A"));
        assertThat(understood.heard()).isEqualTo(new View.Heard("four ten a", false, "refrigerant: R-410A"));
    }

    @Test
    void anAnswerBySpeechIsTimed() throws InterruptedException {
        await(LiveSessionTest::listening);
        loud(0.6);
        await(view -> has(view, "R-410A"));
        await(LiveSessionTest::listening);

        assertThat(live.summary()).singleElement().asString().startsWith("Answers by voice: 1,");
    }

    @Test
    void whenTheMicrophoneIsPulledInMidSentenceNothingIsLostAndItIsTakenUpAgain() throws InterruptedException {
        await(LiveSessionTest::listening);

        loud(0.4);
        sound.add(Optional.empty());

        View lost = await(view -> !view.status().works() && !view.hint().isEmpty());
        assertThat(lost.hint()).contains("gives no sound any more").contains("Use the keys");
        View back = await(view -> view.status().works() && has(view, "R-410A"));
        assertThat(back.hint()).isEmpty();
        await(LiveSessionTest::listening);
        loud(0.6);
        await(view -> has(view, "Piston"));
    }

    @Test
    void aSessionThatWasLeftGoesOnAtTheSameStepAndSaysWhereItIs() throws Exception {
        await(LiveSessionTest::listening);
        loud(0.6);
        View before = await(view -> has(view, "R-410A"));
        assertThat(before.question()).startsWith("What feeds the indoor coil");

        resume(false, AudioBudget.NONE);

        View after = await(LiveSessionTest::listening);
        assertThat(after.question()).isEqualTo("Piston, capillary tube, thermostatic valve, or electronic valve?");
        assertThat(after.answers()).anySatisfy(said -> assertThat(said).startsWith("We are at "));
        assertThat(has(after, "R-410A")).isTrue();
        act(new Action.Utter("piston"));
        await(view -> has(view, "Piston"));
    }

    @Test
    void theSoundOfAnUtteranceIsKeptInTheRecord() throws Exception {
        await(LiveSessionTest::listening);
        act(new Action.Utter("22"));
        await(view -> has(view, "R-22"));
        resume(true, AudioBudget.megabytes(1));
        await(LiveSessionTest::listening);

        loud(0.6);
        await(view -> view.heard().words().equals("four ten a") && !view.heard().partial());
        live.end();
        running.join();
        RecordedSession recorded = RecordedSession.read(folder.resolve("test"));

        Entry spoken = recorded.entries().stream()
                .filter(entry -> entry.event() instanceof Event.Heard heard && heard.source() == Event.Source.VOICE)
                .findFirst()
                .orElseThrow();
        KeptSound.Whole sound = (KeptSound.Whole) recorded.sound(spoken).orElseThrow();
        // 0.6 s of speech, and 0.2 s before and after it as far as there was sound.
        assertThat(Recording.read(sound.file()).samples().orElseThrow().seconds())
                .isBetween(0.75, 1.05);
    }

    @Test
    void whenThereIsNoRoomForSoundItIsSaidOnTheScreenAndTheWordsAreKept() throws Exception {
        await(LiveSessionTest::listening);
        act(new Action.Utter("22"));
        await(view -> has(view, "R-22"));
        resume(true, new AudioBudget(1000, 0));
        await(LiveSessionTest::listening);

        loud(0.6);

        View told = await(view -> !view.hint().isEmpty());
        assertThat(told.hint()).contains("disk budget for sound is used up").contains("the words are");
        assertThat(told.heard().words()).isEqualTo("four ten a");
    }

    @Test
    void what_a_passer_by_cuts_short_is_said_again() throws Exception {
        cutShortBy(Ear.UNKNOWN);

        assertThat(played.poll(10, TimeUnit.SECONDS)).isEqualTo("played");
        assertThat(played.poll(10, TimeUnit.SECONDS)).as("all of it").isEqualTo("played");
    }

    @Test
    void what_an_answer_cuts_short_is_not_said_again() throws Exception {
        cutShortBy("four ten a");

        View answered = await(view -> has(view, "R-410A"));
        int answer = answered.answers().size() + 1;
        for (int line = 0; line < answer; line++) {
            assertThat(played.poll(10, TimeUnit.SECONDS)).isEqualTo("played");
        }
        assertThat(played.poll(3, TimeUnit.SECONDS)).isNull();
    }

    private void cutShortBy(String words) throws Exception {
        await(LiveSessionTest::listening);
        script = List.of(words);
        headset = true;
        endless = true;
        resume(false, AudioBudget.NONE);
        await(LiveSessionTest::listening);
        played.clear();
        loud(0.6);
        assertThat(played.poll(10, TimeUnit.SECONDS)).isEqualTo("stopped");
        endless = false;
    }

    @Test
    void withoutAnEchoCancellerItIsToldThatOrdersAreHeardInSilenceAndWhy() throws Exception {
        await(LiveSessionTest::listening);
        ownVoice = OwnVoice.unavailable("There is no echo canceller for Plan Nine.");

        resume(false, AudioBudget.NONE);

        assertThat(await(view -> !view.hint().isEmpty()).hint())
                .contains("only while I am silent", "Any key silences", "Plan Nine");
    }

    @Test
    void withBluetoothItIsToldThatOrdersAreHeardInSilence() throws Exception {
        await(LiveSessionTest::listening);
        ownVoice = OwnVoice.takenOutBy(new Nothing());
        microphone = "BlueZ hands-free";

        resume(false, AudioBudget.NONE);

        assertThat(await(view -> !view.hint().isEmpty()).hint())
                .contains("Bluetooth", "only while I am silent", "Any key silences");
    }

    @Test
    void whereNobodyWantsOrdersDuringTheVoiceNothingIsTold() throws Exception {
        await(LiveSessionTest::listening);
        microphone = "BlueZ hands-free";

        resume(false, AudioBudget.NONE);

        assertThat(await(LiveSessionTest::listening).hint()).isEmpty();
    }

    @Test
    void lostSoundIsCountedOnTheScreenAndAtTheEnd() throws InterruptedException {
        await(LiveSessionTest::listening);

        overruns = 1;
        await(view -> view.status().overruns() == 1);
        overruns = 2;
        await(view -> view.status().overruns() == 2);

        assertThat(live.summary()).singleElement().asString().startsWith("Sound was lost 2 times");
    }

    @Test
    void aLongSilenceIsAnswered() throws InterruptedException {
        await(LiveSessionTest::listening);
        await(LiveSessionTest::listening);

        clock.by = Duration.ofMinutes(4);

        await(view -> view.answers().contains("Still listening."));
    }

    @Test
    void whatIsTypedCountsLikeWhatIsSaid() throws InterruptedException {
        await(LiveSessionTest::listening);

        act(new Action.Utter("22"));

        await(view -> has(view, "R-22"));
    }

    @Test
    void aVoiceThatIsAskedToBeLouderIsSoAtOnceAndStaysSoInASessionThatGoesOn() throws Exception {
        await(LiveSessionTest::listening);

        act(new Action.Utter("louder"));

        await(view -> view.answers().stream().anyMatch(said -> said.startsWith("Louder.")));
        // 1.42 times as much
        awaitLoudness(11360);
        live.end();
        running.join();
        loudness.clear();
        resume(false, AudioBudget.NONE);
        assertThat(loudness.poll(10, TimeUnit.SECONDS)).isEqualTo(11360);
    }

    private void awaitLoudness(int wanted) throws InterruptedException {
        Integer next = loudness.poll(10, TimeUnit.SECONDS);
        while (next != null && next != wanted) {
            next = loudness.poll(10, TimeUnit.SECONDS);
        }
        assertThat(next).isEqualTo(wanted);
    }

    @Test
    void cautionsStayOnTopUntilTheyAreAcknowledged() throws InterruptedException {
        await(LiveSessionTest::listening);
        for (String words : List.of("410a", "piston")) {
            act(new Action.Utter(words));
        }
        View cautioned = await(view -> !view.cautions().isEmpty());
        assertThat(cautioned.cautions())
                .anySatisfy(caution -> assertThat(caution).startsWith("Warning."));
        assertThat(cautioned.options()).extracting(View.Option::words).contains("understood");

        act(new Action.Utter("understood"));

        await(view -> view.cautions().isEmpty());
    }

    @Test
    void theButtonsOfADoubtTellWhatTheyDo() throws InterruptedException {
        await(LiveSessionTest::listening);
        act(new Action.Utter("410a"));
        await(view -> has(view, "R-410A"));

        act(new Action.Utter("suction two hundred fifty"));

        View doubted = await(view -> view.question().contains("250 psig?"));
        assertThat(doubted.options())
                .containsExactly(new View.Option("YES: 250 psig", "yes"), new View.Option("NO: say it again", "no"));
    }

    @Test
    void theButtonsOfAnEarlyEndTellWhatTheyDo() throws InterruptedException {
        await(LiveSessionTest::listening);

        act(new Action.Utter("finish"));

        View asked = await(view -> view.question().endsWith("Finish anyway?"));
        assertThat(asked.options())
                .containsExactly(new View.Option("YES: finish", "yes"), new View.Option("NO: go on", "no"));
    }

    @Test
    void holdingOnIsShownAndOnlyCarryingOnIsOffered() throws InterruptedException {
        await(LiveSessionTest::listening);

        act(new Action.Utter("hold on"));

        View held = await(View::held);
        assertThat(held.options()).containsExactly(new View.Option("CARRY ON", "carry on"));
    }
}
