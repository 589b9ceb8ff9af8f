package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import readback.assistant.drill.Drill;
import readback.assistant.drill.Progress;
import readback.assistant.drill.Skill;
import readback.assistant.ear.Ear;
import readback.assistant.microphone.MicrophoneReader;
import readback.assistant.record.ReviewLog;
import readback.assistant.report.ProgressPage;
import readback.assistant.session.PlainLines;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.LoudspeakerLostException;
import readback.assistant.voice.Voice;
import readback.assistant.voice.VoiceFailedException;
import readback.calc.name.ConstantName;
import readback.calc.quantity.UnitSetting;
import readback.prompts.text.Language;
import readback.prompts.text.Message;

/** Practice of single skills, by voice or keys. */
@Command(
        name = "drill",
        mixinStandardHelpOptions = true,
        description = {
            "Asks what a technician has to know, with numbers drawn anew each time, and says what is right and why.",
            "What you knew comes up again when you are about to forget it. Speaks and listens, unless --typed says"
                    + " otherwise. Say skip when you do not know, why for a hint, say again, or finish.",
            ""
        })
public final class DrillCommand implements Callable<Integer> {

    private static final String FILE = "drill.jsonl";

    private final Console console;
    private final Clock clock;

    /** Whether it was told that the voice is not heard. */
    private boolean mute;

    @Option(names = "--typed", description = "Ask in lines and read one answer a line from standard input.")
    private boolean typed;

    @Option(
            names = "--reviews",
            paramLabel = "FILE",
            description = "Where your answers are kept. Default: drill.jsonl in the user's data folder.")
    private @Nullable Path reviews;

    @Option(
            names = "--skill",
            arity = "1..*",
            paramLabel = "NAME",
            description = "Ask these skills, due or not, as --list names them.")
    private List<String> skills = new ArrayList<>();

    @Option(names = "--list", description = "Print every skill with how well you know it by now, and end.")
    private boolean list;

    @Option(names = "--html", paramLabel = "FILE", description = "Write what you know as a page, and end.")
    private @Nullable Path html;

    @Mixin
    private OverwriteOption overwrite = new OverwriteOption();

    @Option(names = "--units", paramLabel = "us|metric", description = "Units of questions and answers. Default: us.")
    private String units = "us";

    @Option(
            names = "--voice",
            paramLabel = "embedded|flite|system|none",
            description = "What speaks. Default: the first of flite, system, embedded that is there.")
    private @Nullable String voice;

    @Mixin
    private MicrophoneOption microphone = new MicrophoneOption();

    @Mixin
    private LoudspeakerOption loudspeaker = new LoudspeakerOption();

    @Mixin
    private EarOptions ear = new EarOptions();

    public DrillCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        ReviewLog log = ReviewLog.in(file());
        Progress progress = progress(log);
        if (html != null) {
            OutputFile.at(html, overwrite.force())
                    .write(new ProgressPage(Language.english()).page(progress, clock.instant(), clock.getZone()));
            console.out().println("Written: " + html);
        } else if (list) {
            list(progress);
        } else {
            drill(log, progress);
        }
        return 0;
    }

    private Path file() {
        if (reviews != null) {
            return reviews;
        }
        return SessionOptions.dataFolder().resolveSibling(FILE);
    }

    private Progress progress(ReviewLog log) {
        try {
            ReviewLog.Content content = log.read();
            content.fault()
                    .ifPresent(fault -> console.complain(
                            "'" + file() + "': " + fault + "; what stands before it counts, what follows does not."));
            return Progress.of(content.reviews(), clock.getZone());
        } catch (IOException e) {
            throw new CommandFailure("The answers in '" + file() + "' cannot be read (" + e.getMessage()
                    + "): name another file by --reviews.");
        }
    }

    private void list(Progress progress) {
        Instant now = clock.instant();
        for (Skill skill : Skill.all()) {
            String known = progress.asked(skill) == 0
                    ? Language.english().label("drill.page.never")
                    : Math.round(100 * progress.known(skill, now)) + " %";
            console.out()
                    .printf(
                            "%-24s %-36s %s%n",
                            skill.id(), Language.english().label("drill.skill." + skill.id()), known);
        }
    }

    private void drill(ReviewLog log, Progress progress) {
        Desk desk = Desk.standard();
        UnitSetting setting = SessionOptions.units(units);
        Drill drill = skills.isEmpty()
                ? Drill.due(desk.grammar(), setting, progress, clock.instant())
                : Drill.of(desk.grammar(), setting, chosen(), progress);
        PlainLines lines = console.lines(desk.language());
        if (typed) {
            Talk talk = new Talk(desk, setting, lines, spoken -> {}, log);
            talk.run(drill, new DrillAnswers.Typed(console, lines));
            return;
        }
        try (Voice speaking = VoiceOptions.live(voice);
                Loudspeaker out = loudspeaker.loudspeaker();
                Ear listening = ear.open(desk.grammar(), console)) {
            DrillAnswers.Spoken answers = new DrillAnswers.Spoken(listening, desk.grammar(), console, lines);
            try (MicrophoneReader reader = new MicrophoneReader(microphone.socket(), answers)) {
                reader.start();
                answers.readLines(microphone::there);
                Talk talk = new Talk(desk, setting, lines, text -> say(speaking, out, text), log);
                talk.run(drill, answers);
            }
        }
    }

    private List<Skill> chosen() {
        return skills.stream()
                .map(name -> Skill.all().stream()
                        .filter(skill -> skill.id().equals(name))
                        .findFirst()
                        .orElseThrow(() -> new CommandFailure(
                                "There is no skill '" + name + "': readback drill --list names them.")))
                .toList();
    }

    private void say(Voice speaking, Loudspeaker out, String text) {
        try {
            out.play(speaking.speak(text), () -> false);
            mute = false;
        } catch (VoiceFailedException | LoudspeakerLostException e) {
            if (!mute) {
                mute = true;
                console.complain("the voice is not heard (" + e.getMessage() + "); everything stands on the screen.");
            }
        }
    }

    /** Speaks texts for the ear, one after the other. */
    private interface Speaker {
        void say(String text);
    }

    /** The conversation of one drill. */
    private final class Talk {
        private final Desk desk;
        private final UnitSetting setting;
        private final PlainLines lines;
        private final Speaker speaker;
        private final ReviewLog log;
        private boolean lost;

        Talk(Desk desk, UnitSetting setting, PlainLines lines, Speaker speaker, ReviewLog log) {
            this.desk = desk;
            this.setting = setting;
            this.lines = lines;
            this.speaker = speaker;
            this.log = log;
        }

        void run(Drill drill, DrillAnswers answers) {
            List<Message> first = drill.begin();
            tell(first.isEmpty() ? List.of(Message.of("drill.nothing-due")) : first);
            while (!drill.closed()) {
                Optional<DrillAnswers.Heard> heard = answers.next(drill.expectation());
                if (heard.isEmpty()) {
                    break;
                }
                Drill.Reply reply =
                        drill.hears(heard.get().hypotheses(), heard.get().seconds());
                reply.graded().ifPresent(graded -> keep(graded, heard.get().seconds()));
                tell(reply.says());
            }
            lines.end();
        }

        private void tell(List<Message> messages) {
            messages.forEach(message ->
                    lines.line("screen.plain.readback", desk.wording().shown(message, setting)));
            messages.forEach(message -> speaker.say(desk.wording().spoken(message, false, setting)));
        }

        private void keep(Drill.Graded graded, double seconds) {
            try {
                log.add(new ReviewLog.Review(
                        clock.instant(),
                        graded.skill().id(),
                        graded.review(),
                        ConstantName.of(graded.grade()),
                        graded.answer(),
                        Math.round(seconds * 10) / 10.0));
            } catch (IOException e) {
                if (!lost) {
                    lost = true;
                    console.complain("the answers cannot be kept in '" + file() + "' (" + e.getMessage()
                            + "): this drill counts for nothing later. Name another file by --reviews.");
                }
            }
        }
    }
}
