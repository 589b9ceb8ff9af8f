package readback.assistant.command;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Consumer;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Settings;
import readback.assistant.ear.Ear;
import readback.assistant.live.LiveSession;
import readback.assistant.microphone.Microphones;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.SessionRecord;
import readback.assistant.screen.Board;
import readback.assistant.screen.Face;
import readback.assistant.screen.Layout;
import readback.assistant.screen.PlainFace;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.Strokes;
import readback.assistant.screen.TerminalFace;
import readback.assistant.session.Audience;
import readback.assistant.session.PlainAudience;
import readback.assistant.session.Session;
import readback.assistant.voice.Voice;
import readback.prompts.text.Message;

/** A session with microphone, voice and screen. */
final class LiveCheck {

    /** Texts outside the checklist that are said often. */
    private static final List<String> OFTEN = List.of("again.plain", "caution.heed", "held", "held.over");

    private final Desk desk;
    private final Console console;
    private final Clock clock;

    LiveCheck(Desk desk, Console console, Clock clock) {
        this.desk = desk;
        this.console = console;
        this.clock = clock;
    }

    void run(SessionOptions session, EarOptions ear, VoiceOptions voice, LiveOptions live, boolean json) {
        // Model and voice take a second or two each; they are loaded side by side.
        CompletableFuture<Voice> opening = CompletableFuture.supplyAsync(voice::live);
        Ear listening = ear.open(desk.grammar(), console);
        Voice speaking = voice(opening);
        Optional<Terminal> terminal = live.plain() ? Optional.empty() : terminal();
        if (terminal.isPresent()) {
            onScreen(terminal.get(), session, listening, speaking, live, json);
        } else {
            inLines(session, listening, speaking, live, json);
        }
    }

    private static Voice voice(CompletableFuture<Voice> opening) {
        try {
            return opening.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof CommandFailure failure) {
                throw failure;
            }
            throw e;
        }
    }

    /** The terminal, if input and output are one. */
    private static Optional<Terminal> terminal() {
        try {
            Terminal terminal = TerminalBuilder.builder()
                    .system(true)
                    .systemOutput(TerminalBuilder.SystemOutput.SysOut)
                    .dumb(false)
                    .build();
            if (terminal.getType().startsWith(Terminal.TYPE_DUMB)) {
                terminal.close();
                return Optional.empty();
            }
            return Optional.of(terminal);
        } catch (IOException | IllegalStateException e) {
            return Optional.empty();
        }
    }

    private void onScreen(
            Terminal terminal, SessionOptions session, Ear ear, Voice voice, LiveOptions live, boolean json) {
        ScreenTexts texts = ScreenTexts.english();
        boolean unicode = terminal.encoding().newEncoder().canEncode("█▀▄■□");
        List<String> last = new ArrayList<>();
        try (terminal;
                TerminalFace face = new TerminalFace(terminal, new Layout(live.palette(), texts, unicode), texts)) {
            LiveSession running = live(ear, voice, face, texts, session.settings(), live);
            terminal.handle(Terminal.Signal.WINCH, signal -> running.resize());
            terminal.handle(Terminal.Signal.INT, signal -> running.end());
            try (Strokes strokes = new Strokes(terminal, running::strike, running::end)) {
                strokes.start();
                run(running, session, List.of(), ear.name(), voice.name(), json, last::add);
            }
        } catch (IOException e) {
            throw new CommandFailure("The terminal could not be given back: " + e.getMessage() + ".");
        }
        last.forEach(console.out()::println);
    }

    private void inLines(SessionOptions session, Ear ear, Voice voice, LiveOptions live, boolean json) {
        ScreenTexts texts = ScreenTexts.english();
        console.out().println("Voice: " + voice.name());
        PlainFace face = new PlainFace(console.out(), texts);
        LiveSession running = live(ear, voice, face, texts, session.settings(), live);
        List<Audience> lines = List.of(new PlainAudience(console.out(), true));
        Thread typing = new Thread(() -> typed(running), "typed-lines");
        typing.setDaemon(true);
        typing.start();
        run(running, session, lines, ear.name(), voice.name(), json, console.out()::println);
    }

    /** Every line typed is an utterance; where nobody types, speech is enough. */
    private void typed(LiveSession running) {
        try {
            for (String line = console.in().readLine();
                    line != null;
                    line = console.in().readLine()) {
                if (!line.isBlank()) {
                    running.write(line.strip());
                }
            }
            if (Microphones.names().isEmpty()) {
                console.complain(
                        "there is no microphone and nothing more is typed, so the session is closed: plug one in,"
                                + " or use --typed or --audio.");
                running.end();
            }
        } catch (IOException e) {
            console.complain("typed lines cannot be read any more (" + e.getMessage() + "); speech goes on.");
        }
    }

    private LiveSession live(Ear ear, Voice voice, Face face, ScreenTexts texts, Settings settings, LiveOptions live) {
        LiveSession.Parts parts = new LiveSession.Parts(
                desk.grammar(),
                ear,
                live.microphone(),
                voice,
                live.loudspeaker(),
                face,
                new Board(desk.grammar(), desk.checklists(), desk.wording(), texts, settings.units()),
                texts,
                standing(settings));
        return new LiveSession(parts, live.settings(), clock);
    }

    private void run(
            LiveSession running,
            SessionOptions options,
            List<Audience> more,
            String ear,
            String voice,
            boolean json,
            Consumer<String> out) {
        Instant start = clock.instant();
        SessionRunner runner = new SessionRunner(desk, console, clock);
        try (SessionRecord record = SessionRecord.create(
                options.sessions(), runner.header(Optional.of(ear), Optional.of(voice), options.keeping(), start))) {
            Session session = running.run(own -> {
                List<Audience> audiences = new ArrayList<>(own);
                audiences.addAll(more);
                return Session.open(desk.dialogue(), desk.wording(), record, audiences, options.settings(), start);
            });
            boolean finished = session.closed();
            if (!finished) {
                session.on(new Event.Ended(clock.instant()));
            }
            out.accept("Record: " + record.folder().resolve(SessionRecord.FILE));
            running.summary().ifPresent(out);
            if (json) {
                out.accept(Result.json(session.assessment(), finished));
            }
        } catch (RecordUnavailableException e) {
            throw new CommandFailure(e);
        }
    }

    /** What the checklist of the job will say, as the voice says it. */
    private List<String> standing(Settings settings) {
        List<String> keys = new ArrayList<>(OFTEN);
        desk.checklists()
                .job(settings.job())
                .ifPresent(job -> job.parts()
                        .forEach(part -> part.checklist().steps().forEach(step -> {
                            keys.add("step." + step.id() + ".ask");
                            keys.add("step." + step.id() + ".again");
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
