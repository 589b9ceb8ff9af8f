package readback.assistant.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.ear.Ear;
import readback.assistant.probe.ProbeFeed;
import readback.assistant.session.SteadyClock;

/** The main job: a charge check, from the refrigerant to the verdict. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = {
            "Leads through a charge check: asks, reads back, judges, warns, keeps a record.",
            "Listens to the microphone, unless --typed or --audio say otherwise.",
            "",
            "Say or type, for example:",
            "  four ten a                          what is asked",
            "  suction one one eight               a value with its name, in any order",
            "  suction line fifty two, wet bulb sixty seven",
            "  correction, one one zero            replaces the last value",
            "  why / how / help / say again / where are we / scratch that / finish",
            ""
        })
public final class CheckCommand implements Callable<Integer> {

    private final Console console;

    @Option(
            names = "--audio",
            arity = "1..*",
            paramLabel = "FILE|FOLDER",
            description = "Recordings to listen to, in order: WAV, PCM 8, 16 or 24 bit, 8 to 48 kHz.")
    private List<Path> audio = new ArrayList<>();

    @Option(names = "--typed", description = "Read one utterance a line from standard input.")
    private boolean typed;

    @Option(
            names = "--json",
            description = "End with one line of JSON: readings, saturation, target, verdict, cautions.")
    private boolean json;

    @Option(
            names = "--resume",
            paramLabel = "SESSION",
            description = {
                "Go on with a session that was left without an end, at the step where it stopped: its folder, its name"
                        + " as 'readback sessions' prints it, the beginning of the name, or 'last'."
            })
    private @Nullable String resume;

    @Mixin
    private SessionOptions session = new SessionOptions();

    @Mixin
    private EarOptions ear = new EarOptions();

    @Mixin
    private VoiceOptions voice = new VoiceOptions();

    @Mixin
    private LiveOptions live = new LiveOptions();

    @Mixin
    private ProbeOptions probes = new ProbeOptions();

    public CheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (typed && !audio.isEmpty()) {
            throw new CommandFailure("Say one place where the words come from: --typed or --audio, not both.");
        }
        if (typed && probes.readStandardInput()) {
            throw new CommandFailure(
                    "Probes on the standard input leave no room for typed lines: connect them by tcp or"
                            + " serial, or leave --typed out.");
        }
        live.check();
        voice.check();
        if (!typed && audio.isEmpty()) {
            Opening opening = Opening.of(ear, voice);
            new LiveCheck(Desk.standard(), console, SteadyClock.system())
                    .run(new LiveCheck.Wishes(
                            session.settings(),
                            session.sessions(),
                            session.keeping(),
                            opening,
                            live,
                            resumed(),
                            json,
                            probes,
                            Optional.empty()));
            return 0;
        }
        Desk desk = Desk.standard();
        SteadyClock clock = SteadyClock.system();
        Optional<VoiceOptions.Speaker> speaker = voice.open(console);
        try {
            if (typed) {
                try (ProbeFeed shown = probes.open()) {
                    launch(desk, clock, speaker, Optional.empty(), new TypedInput(desk, console, clock, shown));
                }
            } else {
                List<AudioFiles.Playable> recordings = AudioFiles.read(audio, console);
                try (Ear listening = ear.open(desk.grammar(), console)) {
                    boolean keepsAudio = session.keeping().sound();
                    launch(
                            desk,
                            clock,
                            speaker,
                            Optional.of(listening.name()),
                            new RecordedInput(desk, console, recordings, listening, keepsAudio));
                }
            }
        } finally {
            speaker.ifPresent(VoiceOptions.Speaker::close);
        }
        return 0;
    }

    private Optional<Path> resumed() {
        return Optional.ofNullable(resume).map(named -> SessionFiles.named(session.sessions(), named));
    }

    private void launch(
            Desk desk,
            SteadyClock clock,
            Optional<VoiceOptions.Speaker> speaker,
            Optional<String> listening,
            InputCourse.Input input) {
        SessionLauncher launcher = new SessionLauncher(desk, console, clock);
        SessionSettings settings = session.settings().delivered(live.delivery());
        launcher.launch(
                new SessionLauncher.Plan(
                        settings,
                        session.sessions(),
                        session.keeping(),
                        listening,
                        speaker.map(VoiceOptions.Speaker::name),
                        resumed().map(launcher::reopened),
                        json),
                new InputCourse(console, speaker, !typed, input),
                console.out()::println);
    }
}
