package readback.assistant.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.ear.Ear;
import readback.assistant.session.SteadyClock;
import readback.assistant.sound.Recording;

/** Plays a recorded service call through the whole path. */
@Command(
        name = "demo",
        mixinStandardHelpOptions = true,
        description = {
            "Plays a recorded service call: the recogniser hears it, the dialogue answers, the verdict follows.",
            "The recordings are synthetic: text-to-speech voices with fan noise, set in a town that does not exist."
        })
public final class DemoCommand implements Callable<Integer> {

    /** The recorded calls. */
    enum Call {
        PISTON,
        VALVE;

        String resource() {
            return "/readback/assistant/demo/" + name().toLowerCase(Locale.ROOT) + ".wav";
        }
    }

    private final Console console;

    @Parameters(
            arity = "0..1",
            paramLabel = "piston|valve",
            description = "Which call: an undercharged piston system, or an expansion valve system that is right."
                    + " Default: piston.")
    private String call = "piston";

    @Option(names = "--json", description = "End with the result as one line of JSON.")
    private boolean json;

    @Mixin
    private SessionOptions session = new SessionOptions();

    @Mixin
    private EarOptions ear = new EarOptions();

    @Mixin
    private VoiceOptions voice = new VoiceOptions();

    public DemoCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Desk desk = Desk.standard();
        console.out().println("A synthetic recording: text-to-speech voices and fan noise, an invented service call.");
        List<AudioFiles.Playable> recordings = List.of(recording());
        SteadyClock clock = SteadyClock.system();
        Optional<VoiceOptions.Speaker> speaker = voice.open(console);
        try (Ear listening = ear.open(desk.grammar(), console)) {
            SessionLauncher.Plan plan = new SessionLauncher.Plan(
                    // the recorded calls do not tell it
                    session.settings().knowing(SessionSettings.SEA_LEVEL),
                    session.sessions(),
                    session.keeping(),
                    Optional.of(listening.name()),
                    speaker.map(VoiceOptions.Speaker::name),
                    Optional.empty(),
                    json);
            RecordedInput input = new RecordedInput(
                    desk, console, recordings, listening, plan.keeping().sound());
            new SessionLauncher(desk, console, clock)
                    .launch(plan, new InputCourse(console, speaker, true, input), console.out()::println);
        } finally {
            speaker.ifPresent(VoiceOptions.Speaker::close);
        }
        return 0;
    }

    private AudioFiles.Playable recording() {
        Call chosen = chosen();
        try {
            Path file = Files.createTempFile("readback-demo-", ".wav");
            try (InputStream in = DemoCommand.class.getResourceAsStream(chosen.resource())) {
                if (in == null) {
                    throw new CommandFailure("The recording of this demo is missing from the installation.");
                }
                Files.copy(in, file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
                Recording recording = Recording.read(file);
                return new AudioFiles.Playable(
                        Path.of(chosen.name().toLowerCase(Locale.ROOT) + ".wav"),
                        recording
                                .samples()
                                .orElseThrow(() -> new CommandFailure(
                                        recording.problem().orElse("The recording cannot be read."))));
            } finally {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new CommandFailure("The recording could not be unpacked: " + e.getMessage() + ".");
        }
    }

    private Call chosen() {
        for (Call each : Call.values()) {
            if (each.name().equalsIgnoreCase(call)) {
                return each;
            }
        }
        throw new CommandFailure("There is no demo '" + call + "': choose piston or valve.");
    }
}
