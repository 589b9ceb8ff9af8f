package readback.assistant.live;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jline.terminal.Size;
import org.jline.terminal.impl.LineDisciplineTerminal;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.ear.BundledEar;
import readback.assistant.ear.EarUnavailableException;
import readback.assistant.echo.EchoCanceller;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.probe.ProbeFeed;
import readback.assistant.record.Header;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.SessionRecord;
import readback.assistant.screen.Action;
import readback.assistant.screen.Board;
import readback.assistant.screen.Face;
import readback.assistant.screen.Layout;
import readback.assistant.screen.Palette;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.Stroke;
import readback.assistant.screen.TerminalFace;
import readback.assistant.screen.View;
import readback.assistant.session.Session;
import readback.assistant.session.SteadyClock;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.Voice;
import readback.grammar.Grammar;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Language;

/**
 * A live session of the real parts (dialogue, ear, screen, record) with the microphone, voice and loudspeaker that a
 * measurement chooses. The screen is drawn to nobody.
 */
final class MeasuredSession implements AutoCloseable {

    private final Dialogue dialogue;
    private final Clock clock;
    private final SessionRecord record;
    private final LineDisciplineTerminal terminal;
    private final Watched face;
    private final LiveSession live;

    MeasuredSession(
            Path folder,
            MicrophoneFinder.Socket microphone,
            Voice voice,
            Loudspeaker loudspeaker,
            Optional<EchoCanceller> canceller,
            LiveSession.Settings settings,
            Clock clock)
            throws IOException, EarUnavailableException, RecordUnavailableException {
        Grammar grammar = Grammar.standard();
        Checklists checklists = Checklists.standard();
        ScreenTexts texts = new ScreenTexts(Language.english());
        this.clock = clock;
        this.dialogue = new Dialogue(grammar, checklists);
        this.record =
                SessionRecord.create(folder, new Header("measured", clock.instant(), "measured", Map.of(), Map.of()));
        this.terminal = new LineDisciplineTerminal(
                "measured", "screen-256color", OutputStream.nullOutputStream(), StandardCharsets.UTF_8);
        terminal.setSize(Size.of(120, 40));
        this.face = new Watched(new TerminalFace(terminal, new Layout(Palette.DAY, texts, true), texts));
        this.live = new LiveSession(
                new LiveSession.Parts(
                        grammar,
                        BundledEar.open(),
                        microphone,
                        voice,
                        loudspeaker,
                        canceller.map(OwnVoice::takenOutBy).orElse(OwnVoice.LEFT_IN),
                        face,
                        new Board(grammar, checklists, Language.english(), SessionSettings.STANDARD.units()),
                        texts,
                        ProbeFeed.NONE,
                        List.of()),
                settings,
                SteadyClock.from(
                        clock,
                        () -> Duration.between(Instant.EPOCH, clock.instant()).toNanos()));
    }

    LiveSession live() {
        return live;
    }

    /** Runs to the end of the session; whoever calls becomes its thread. */
    Session run() {
        return live.run(audiences -> Session.open(
                dialogue, Language.english().wording(), record, audiences, SessionSettings.STANDARD, clock.instant()));
    }

    /** Whether it listens and is silent; any thread. */
    boolean listening() {
        return face.listening;
    }

    @Override
    public void close() throws IOException {
        face.close();
        terminal.close();
        record.close();
    }

    /** A screen that lets others know whether it is listened. */
    private static final class Watched implements Face {
        private final Face screen;
        private volatile boolean listening;

        private Watched(Face screen) {
            this.screen = screen;
        }

        @Override
        public void show(View view) {
            listening = view.status().listening();
            screen.show(view);
        }

        @Override
        public Optional<Action> on(Stroke stroke) {
            return screen.on(stroke);
        }

        @Override
        public void renew() {
            screen.renew();
        }

        @Override
        public void close() {
            screen.close();
        }
    }
}
