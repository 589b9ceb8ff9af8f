package readback.assistant.command;

import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.Tutor;
import readback.assistant.practice.Difficulty;
import readback.assistant.practice.Outlook;
import readback.assistant.practice.PracticeTime;
import readback.assistant.practice.Scenario;
import readback.assistant.practice.ScenarioList;
import readback.assistant.practice.World;
import readback.assistant.record.About;
import readback.assistant.session.SteadyClock;
import readback.calc.name.ConstantName;
import readback.calc.quantity.UnitSetting;
import readback.prompts.text.Fact;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/** A call at a simulated unit, led like a real one. */
@Command(
        name = "practice",
        mixinStandardHelpOptions = true,
        description = {
            "A practice call at a simulated unit that cannot be hurt: the same questions, the same voice.",
            "The unit's instruments stand on the screen; call them out, say what you moved (\"four ounces\") and what you"
                    + " put right (\"clean the filter\"). Waiting passes sixty times as fast. At the end you are told what was wrong.",
            "Records are marked as practice and lie in a folder of their own.",
            ""
        })
public final class PracticeCommand implements Callable<Integer> {

    private static final String FOLDER = "practice";

    private final Console console;
    private final Supplier<PracticeTime> times;

    @Option(names = "--list", description = "Print the scenarios that have a learning goal, and end.")
    private boolean list;

    @Option(
            names = "--scenario",
            paramLabel = "NAME",
            description = "A scenario as --list names it, or a drawn one as its debrief named it.")
    private @Nullable String scenario;

    @Option(
            names = "--level",
            paramLabel = "easy|middle|hard",
            description = "Draw a call this hard. Default: easy, where no scenario is named.")
    private @Nullable String level;

    @Option(
            names = "--start",
            paramLabel = "NUMBER",
            description = "Start number of the draw: the same one draws the same call. Default: by chance.")
    private @Nullable Long start;

    @Option(
            names = "--exam",
            description = {
                "No instrument is marked, nothing is explained or worked out until you have said your own verdict.",
                "It is graded at the end. Cautions are given as ever."
            })
    private boolean exam;

    @Option(names = "--typed", description = "Read one utterance a line from standard input.")
    private boolean typed;

    @Mixin
    private SessionOptions session = new SessionOptions();

    @Mixin
    private EarOptions ear = new EarOptions();

    @Mixin
    private VoiceOptions voice = new VoiceOptions();

    @Mixin
    private LiveOptions live = new LiveOptions();

    public PracticeCommand(Console console) {
        this(console, PracticeTime::system);
    }

    /** @param times makes the time that a call goes by */
    PracticeCommand(Console console, Supplier<PracticeTime> times) {
        this.console = console;
        this.times = times;
    }

    @Override
    public Integer call() {
        if (list) {
            list();
            return 0;
        }
        live.check();
        voice.check();
        World world = new World(chosen());
        UnitSetting units = session.settings().units();
        PracticeTime time = times.get();
        PracticeCall call =
                new PracticeCall(world, time, new Outlook(world, !exam, Language.english(), units, time.clock()));
        opening(world).forEach(console.out()::println);
        if (typed) {
            typed(Desk.standard(), call);
        } else {
            Opening opening = Opening.of(ear, voice);
            new LiveCheck(Desk.standard(), console, time.clock())
                    .run(new LiveCheck.Wishes(
                            settings(),
                            folder(),
                            keeping(world),
                            opening,
                            live,
                            Optional.empty(),
                            false,
                            new ProbeOptions(),
                            Optional.of(call)));
        }
        debrief(world, units);
        return 0;
    }

    private void list() {
        Language language = Language.english();
        ScenarioList scenarios = ScenarioList.standard();
        scenarios
                .names()
                .forEach(name -> console.out()
                        .printf(
                                "%-18s %-7s %s%n",
                                name,
                                scenarios.difficulty(name).map(ConstantName::of).orElse(""),
                                language.label("practice.complaint." + name)));
    }

    private Scenario chosen() {
        if (scenario != null) {
            if (level != null || start != null) {
                throw new CommandFailure("Name a scenario, or draw one by --level and --start, not both.");
            }
            String name = scenario;
            return Scenario.named(name)
                    .orElseThrow(() -> new CommandFailure(
                            "There is no scenario '" + name + "': readback practice --list names them."));
        }
        Difficulty difficulty = level == null
                ? Difficulty.EASY
                : ConstantName.find(Difficulty.class, level.toLowerCase(Locale.ROOT))
                        .orElseThrow(() -> new CommandFailure("--level is easy, middle or hard, not '" + level + "'."));
        long number = start == null ? new SecureRandom().nextInt(1_000_000) : start;
        return Scenario.drawn(difficulty, number);
    }

    private List<String> opening(World world) {
        Language language = Language.english();
        UnitSetting units = session.settings().units();
        String complaint = world.scenario().complaint();
        List<String> lines = new ArrayList<>();
        lines.add(language.wording()
                .shown(Message.of("practice.opening").with("complaint", new Fact.Text(Message.of(complaint))), units));
        lines.add(language.label(exam ? "practice.opening.exam" : "practice.opening.guide"));
        lines.add(language.label(typed ? "practice.opening.time.typed" : "practice.opening.time"));
        return lines;
    }

    private void typed(Desk desk, PracticeCall call) {
        SteadyClock clock = call.time().clock();
        Optional<VoiceOptions.Speaker> speaker = voice.open(console);
        try {
            new SessionLauncher(desk, console, clock)
                    .launch(
                            new SessionLauncher.Plan(
                                    settings(),
                                    folder(),
                                    keeping(call.world()),
                                    Optional.empty(),
                                    speaker.map(VoiceOptions.Speaker::name),
                                    Optional.empty(),
                                    false),
                            new InputCourse(
                                    console,
                                    speaker,
                                    false,
                                    new PracticeInput(console, clock, call),
                                    List.of(call.world())),
                            console.out()::println);
        } finally {
            speaker.ifPresent(VoiceOptions.Speaker::close);
        }
    }

    /** The site of every scenario lies at sea level. */
    private SessionSettings settings() {
        return session.settings().knowing(SessionSettings.SEA_LEVEL).taughtBy(exam ? Tutor.EXAMINER : Tutor.GUIDE);
    }

    private Path folder() {
        return session.sessionsOr(SessionOptions.dataFolder().resolveSibling(FOLDER));
    }

    /** What the record says of itself: that it is practice, and on what. */
    private SessionOptions.Keeping keeping(World world) {
        SessionOptions.Keeping kept = session.keeping();
        Map<String, String> about = new TreeMap<>(kept.about());
        about.put(About.PRACTICE, world.scenario().name());
        return new SessionOptions.Keeping(about, kept.audio());
    }

    private void debrief(World world, UnitSetting units) {
        Language language = Language.english();
        world.debrief()
                .messages()
                .forEach(message -> console.out().println(language.wording().shown(message, units)));
        console.out()
                .println(language.wording()
                        .shown(
                                Message.of("practice.repeat")
                                        .with(
                                                "name",
                                                new Fact.Quoted(world.scenario().name())),
                                units));
    }
}
