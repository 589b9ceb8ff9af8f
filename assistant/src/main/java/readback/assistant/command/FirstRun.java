package readback.assistant.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import org.jline.terminal.Terminal;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import readback.assistant.microphone.MicrophoneFinder;
import readback.assistant.screen.Layout;
import readback.assistant.screen.Palette;
import readback.assistant.screen.ScreenTexts;
import readback.assistant.screen.StrokeReader;
import readback.assistant.screen.TerminalFace;
import readback.assistant.session.PlainLines;
import readback.assistant.settings.SettingsException;
import readback.assistant.settings.SettingsFile;
import readback.assistant.setup.Beginning;
import readback.assistant.setup.Choice;
import readback.assistant.setup.Name;
import readback.assistant.setup.SetupLines;
import readback.assistant.setup.SetupRun;
import readback.assistant.setup.Situation;
import readback.assistant.voice.LineLoudspeaker;
import readback.calc.name.ConstantName;
import readback.grammar.Grammar;
import readback.prompts.text.Language;

/** Setting up on this machine: its devices, its terminal and its settings file. */
public final class FirstRun {

    /** The whole program, with other arguments. */
    @FunctionalInterface
    public interface Program {
        /** Runs it and gives its exit code. */
        int run(String... arguments);
    }

    /** Where a setting is called otherwise on the command line than in setting up. */
    private static final Map<Name, String> OTHERWISE = Map.of(Name.ALTITUDE, "altitude-ft");

    private final Console console;
    private final Program program;
    private final CommandLine check;
    private final Path file;
    private final Supplier<Sound> sound;
    private Optional<CompletableFuture<Void>> faster = Optional.empty();

    /** Names of the devices that are there. */
    record Sound(List<String> microphones, List<String> loudspeakers) {
        static Sound ofMachine() {
            return new Sound(MicrophoneFinder.names(), LineLoudspeaker.names());
        }
    }

    /**
     * @param check the command whose options can be set
     * @param file the settings file
     * @param sound finds the devices, when they are asked about
     */
    FirstRun(Console console, Program program, CommandLine check, Path file, Supplier<Sound> sound) {
        this.console = console;
        this.program = program;
        this.check = check;
        this.file = file;
        this.sound = sound;
    }

    /** That of this machine and user; {@code all} is the command that all others belong to. */
    static FirstRun of(Console console, Program program, CommandSpec all) {
        return new FirstRun(
                console,
                program,
                Objects.requireNonNull(all.subcommands().get("check")),
                SettingsDefaults.usualPlace(),
                Sound::ofMachine);
    }

    /** Whether nothing was ever set up here. */
    boolean due() {
        return !Files.exists(file);
    }

    /**
     * Asks, and begins what is chosen at the end; after selfcheck, whose findings may be a reason to set up, it asks
     * again.
     *
     * @param again whether the first question is one of setting up
     * @param plain whether it asks in lines where there is a screen too
     * @return the exit code
     */
    int run(boolean again, boolean plain) {
        Choice next = asked(again ? Beginning.STEPS : Beginning.WELCOME, plain);
        while (next == Choice.SELFCHECK) {
            program.run(ConstantName.of(next));
            next = asked(Beginning.CHOICE, plain);
        }
        if (next != Choice.LEAVE) {
            return program.run(ConstantName.of(next));
        }
        faster.ifPresent(this::waited);
        return 0;
    }

    /** The next start is made faster while whoever sets up goes on; a start that stays slow is told by selfcheck. */
    private void prepareStart() {
        if (faster.isPresent()) {
            return;
        }
        faster = ClassArchive.ofProgram()
                .filter(archive -> !archive.used())
                .map(archive -> CompletableFuture.runAsync(() -> {
                    try {
                        archive.make();
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                }));
    }

    private void waited(CompletableFuture<Void> preparing) {
        if (!preparing.isDone()) {
            console.out().println("One moment: Readback is made to start faster.");
            console.out().flush();
        }
        preparing.exceptionally(failed -> null).join();
    }

    private Choice asked(Beginning beginning, boolean plain) {
        Optional<Terminal> terminal =
                plain || console.columns().get().isEmpty() ? Optional.empty() : SystemTerminal.open();
        if (terminal.isEmpty()) {
            return inLines(beginning);
        }
        if (beginning == Beginning.CHOICE) {
            entered();
        }
        return onScreen(terminal.get(), beginning);
    }

    /** The screen would cover what stands there, so it is left until it was read. */
    private void entered() {
        console.out().println(Language.english().label("setup.enter"));
        console.out().flush();
        try {
            console.in().readLine();
        } catch (IOException e) {
            console.complain("typed lines cannot be read any more (" + e.getMessage() + ").");
        }
    }

    private Choice onScreen(Terminal terminal, Beginning beginning) {
        ScreenTexts texts = ScreenTexts.ofSetup(Language.english());
        Layout layout = new Layout(Palette.DAY, texts, SystemTerminal.showsBlocks(terminal));
        try (terminal;
                TerminalFace face = new TerminalFace(terminal, layout, texts)) {
            SetupRun running =
                    new SetupRun(Grammar.standard(), Language.english(), new MachineDevices(), this::write, face);
            terminal.handle(Terminal.Signal.WINCH, signal -> running.resize());
            terminal.handle(Terminal.Signal.INT, signal -> running.end());
            try (StrokeReader strokes = new StrokeReader(terminal, running::strike, running::end)) {
                strokes.start();
                return running.run(situation(), beginning);
            }
        } catch (IOException e) {
            throw new CommandFailure("The terminal could not be given back: " + e.getMessage() + ".");
        }
    }

    private Choice inLines(Beginning beginning) {
        PlainLines lines = console.lines(Language.english());
        try (SetupLines face = new SetupLines(lines, Language.english())) {
            SetupRun running =
                    new SetupRun(Grammar.standard(), Language.english(), new MachineDevices(), this::write, face);
            Thread typing = new Thread(() -> typed(running, lines), "typed-lines");
            typing.setDaemon(true);
            typing.start();
            return running.run(situation(), beginning);
        }
    }

    /** What is typed after the line that ended it stays for whoever asks next. */
    private void typed(SetupRun running, PlainLines lines) {
        try {
            console.typedWhile(lines, running::write);
        } catch (IOException e) {
            console.complain("typed lines cannot be read any more (" + e.getMessage() + ").");
        }
        running.end();
    }

    private Situation situation() {
        Map<Name, String> stated = new EnumMap<>(Name.class);
        Optional<String> fault = Optional.empty();
        try {
            Map<String, String> values = values();
            for (Name name : Name.values()) {
                Optional.ofNullable(values.get(setting(name))).ifPresent(value -> stated.put(name, value));
            }
        } catch (SettingsException e) {
            fault = Optional.of(String.valueOf(e.getMessage()));
        }
        Sound found = sound.get();
        return new Situation(found.microphones(), found.loudspeakers(), file.toString(), !due(), fault, stated);
    }

    private static String setting(Name name) {
        return OTHERWISE.getOrDefault(name, ConstantName.of(name));
    }

    private Map<String, String> values() throws SettingsException {
        return due() ? Map.of() : SettingsDefaults.read(file, check).values();
    }

    private SetupRun.Stored write(Map<Name, String> settings) {
        try {
            Map<String, String> values = new TreeMap<>();
            try {
                values.putAll(values());
            } catch (SettingsException faulty) {
                // that was told; the file that has the mistake is kept beside
                values.clear();
            }
            settings.forEach((name, value) -> values.put(setting(name), value));
            Optional<Path> kept =
                    SettingsFile.replace(file, SettingsFile.text(SettingsDefaults.settings(check), values));
            prepareStart();
            return new SetupRun.Stored(kept.map(Path::getFileName).map(Path::toString), Optional.empty());
        } catch (IOException e) {
            return new SetupRun.Stored(
                    Optional.empty(), Optional.of("'" + file + "' cannot be written (" + reason(e) + ")."));
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "you may not write there";
        }
        return String.valueOf(e.getMessage());
    }
}
