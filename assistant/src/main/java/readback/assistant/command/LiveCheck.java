package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jline.terminal.Terminal;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.ear.Ear;
import readback.assistant.ear.VoskEar;
import readback.assistant.live.LiveSession;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.microphone.MicrophoneLostException;
import readback.assistant.record.SessionRecord;
import readback.assistant.screen.Board;
import readback.assistant.screen.Face;
import readback.assistant.screen.Layout;
import readback.assistant.screen.Palette;
import readback.assistant.screen.PlainFace;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.StrokeReader;
import readback.assistant.screen.TerminalFace;
import readback.assistant.session.Audience;
import readback.assistant.session.PlainAudience;
import readback.assistant.session.PlainLines;
import readback.assistant.session.Session;
import readback.assistant.session.SteadyClock;
import readback.assistant.voice.Voice;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/** A session with microphone, voice and screen. */
final class LiveCheck {

    /** Texts outside the checklist that are said often. */
    private static final List<String> OFTEN = List.of("again.plain", "caution.heed", "held", "held.over");

    private final Desk desk;
    private final Console console;
    private final SteadyClock clock;
    private final SessionLauncher launcher;

    LiveCheck(Desk desk, Console console, SteadyClock clock) {
        this.desk = desk;
        this.console = console;
        this.clock = clock;
        this.launcher = new SessionLauncher(desk, console, clock);
    }

    /**
     * What was asked for on the command line.
     *
     * @param settings of a new session
     * @param sessions folder of the records
     * @param resume a session to go on with, in place of a new one
     * @param probes instruments that give values by themselves
     * @param practice the simulated unit that the session is about, where it is practice
     */
    record Wishes(
            SessionSettings settings,
            Path sessions,
            SessionOptions.Keeping keeping,
            Opening opening,
            LiveOptions live,
            Optional<Path> resume,
            boolean json,
            ProbeOptions probes,
            Optional<PracticeCall> practice) {}

    /**
     * A session that is about to run.
     *
     * @param deaf why nothing can be heard here; empty where it can
     * @param out gets the last lines
     */
    private record Ready(
            Wishes wishes,
            Optional<SessionRecord.Resumption> resumption,
            SessionSettings settings,
            Ear ear,
            Optional<String> deaf,
            Voice voice,
            Consumer<String> out) {

        /** The microphone, which is none where nothing could be made of its sound. */
        MicrophoneFinder.Socket microphone() {
            return deaf.isEmpty()
                    ? wishes.live().microphone()
                    : () -> {
                        throw new MicrophoneLostException(deaf.get());
                    };
        }
    }

    void run(Wishes wishes) {
        Optional<SessionRecord.Resumption> resumption = wishes.resume().map(launcher::reopened);
        try {
            Ear ear = wishes.opening().ear(desk.grammar(), console);
            Optional<String> deaf = wishes.opening().deaf();
            deaf.ifPresent(console::complain);
            List<String> last = new ArrayList<>();
            // where values come by the standard input nobody can strike keys
            boolean lines = wishes.live().plain() || wishes.probes().readStandardInput();
            Optional<Terminal> terminal = lines ? Optional.empty() : SystemTerminal.open();
            Ready ready = new Ready(
                    wishes,
                    resumption,
                    resumption
                            .map(old -> old.session().settings().orElse(SessionSettings.STANDARD))
                            .orElseGet(() ->
                                    wishes.settings().delivered(wishes.live().delivery())),
                    ear,
                    deaf,
                    wishes.opening().voice(),
                    last::add);
            if (terminal.isPresent()) {
                onScreen(terminal.get(), ready);
            } else {
                inLines(ready);
            }
            last.forEach(console.out()::println);
        } finally {
            resumption.ifPresent(each -> each.record().close());
        }
    }

    private void onScreen(Terminal terminal, Ready ready) {
        ScreenTexts texts = new ScreenTexts(Language.english());
        Palette palette = ready.wishes().live().palette();
        try (terminal;
                TerminalFace face = new TerminalFace(
                        terminal, new Layout(palette, texts, SystemTerminal.showsBlocks(terminal)), texts)) {
            LiveSession running = live(ready, face, texts);
            terminal.handle(Terminal.Signal.WINCH, signal -> running.resize());
            terminal.handle(Terminal.Signal.INT, signal -> running.end());
            try (StrokeReader strokes = new StrokeReader(terminal, running::strike, running::end)) {
                strokes.start();
                run(running, ready, List.of());
            }
        } catch (IOException e) {
            throw new CommandFailure("The terminal could not be given back: " + e.getMessage() + ".");
        }
    }

    private void inLines(Ready ready) {
        ScreenTexts texts = new ScreenTexts(Language.english());
        console.out().println("Voice: " + ready.voice().name());
        PlainLines lines = console.lines(Language.english());
        PlainFace face = new PlainFace(lines, texts);
        LiveSession running = live(ready, face, texts);
        Thread typing = new Thread(() -> typed(running, lines, ready.wishes().live()), "typed-lines");
        typing.setDaemon(true);
        if (!ready.wishes().probes().readStandardInput()) {
            typing.start();
        }
        run(running, ready, List.of(new PlainAudience(lines, true)));
        lines.end();
    }

    /** Every line typed is an utterance; where nobody types, speech is enough. */
    private void typed(LiveSession running, PlainLines lines, LiveOptions live) {
        try {
            console.typed(lines, running::write);
            if (VoskEar.noneForThisMachine().isPresent()) {
                running.end();
            } else if (!live.hasMicrophone()) {
                console.complain(
                        "there is no microphone and nothing more is typed, so the session is left: plug one in,"
                                + " or use --typed or --audio.");
                running.end();
            }
        } catch (IOException e) {
            console.complain("typed lines cannot be read any more (" + e.getMessage() + "); speech goes on.");
        }
    }

    private LiveSession live(Ready ready, Face face, ScreenTexts texts) {
        LiveOptions options = ready.wishes().live();
        LiveSession.Parts parts = new LiveSession.Parts(
                desk.grammar(),
                ready.ear(),
                ready.microphone(),
                ready.voice(),
                options.loudspeaker(),
                options.ownVoice(),
                face,
                new Board(
                        desk.grammar(),
                        desk.checklists(),
                        desk.language(),
                        ready.settings().units(),
                        asked -> ready.wishes()
                                .practice()
                                .map(call -> call.outlook().seen(asked))),
                texts,
                ready.wishes().probes().open(),
                standing(ready.settings()));
        boolean keepsSound = ready.wishes().keeping().sound();
        return new LiveSession(parts, options.settings(keepsSound), clock);
    }

    private void run(LiveSession running, Ready ready, List<Audience> more) {
        Wishes wishes = ready.wishes();
        List<Audience> audiences = new ArrayList<>(more);
        wishes.practice().map(PracticeCall::live).ifPresent(audiences::addAll);
        launcher.launch(
                new SessionLauncher.Plan(
                        ready.settings(),
                        wishes.sessions(),
                        wishes.keeping(),
                        Optional.of(ready.ear().name()),
                        Optional.of(ready.voice().name()),
                        ready.resumption(),
                        wishes.json()),
                new LiveCourse(running, audiences),
                ready.out());
    }

    /** A session whose events come from microphone, keys and timers as they happen. */
    private final class LiveCourse implements SessionLauncher.Course {
        private final LiveSession running;
        private final List<Audience> more;

        LiveCourse(LiveSession running, List<Audience> more) {
            this.running = running;
            this.more = more;
        }

        @Override
        public Session run(SessionLauncher.Opening opening) {
            return running.run(own -> {
                List<Audience> audiences = new ArrayList<>(own);
                audiences.addAll(more);
                return opening.with().apply(audiences);
            });
        }

        @Override
        public List<String> summary(Session session) {
            List<String> lines = new ArrayList<>();
            if (session.closed() && more.isEmpty()) {
                // The screen is given back at once; what closed the record stays readable on the terminal.
                lines.addAll(lastWords(session));
            }
            lines.addAll(running.summary());
            return lines;
        }
    }

    private List<String> lastWords(Session session) {
        return session.state().conversation().said().stream()
                .map(message ->
                        desk.wording().shown(message, session.state().settings().units()))
                .toList();
    }

    /** What the checklist of the job will say, as the voice says it. */
    private List<String> standing(SessionSettings settings) {
        List<String> keys = new ArrayList<>(OFTEN);
        desk.checklists()
                .job(settings.job())
                .ifPresent(job -> job.parts()
                        .forEach(part -> part.checklist().steps().forEach(step -> {
                            keys.add(step.text(".ask").key());
                            keys.add(step.text(".again").key());
                        })));
        return keys.stream()
                .filter(key ->
                        desk.wording().has(key) && desk.wording().places(key).isEmpty())
                .map(key -> desk.wording().spoken(Message.of(key), settings.brief(), settings.units()))
                .filter(text -> !text.isBlank())
                .distinct()
                .toList();
    }
}
