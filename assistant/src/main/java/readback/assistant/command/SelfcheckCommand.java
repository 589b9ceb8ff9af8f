package readback.assistant.command;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import readback.assistant.selfcheck.CheckResult;
import readback.assistant.selfcheck.SelfCheck;
import readback.assistant.voice.Loudspeaker;
import readback.assistant.voice.Voice;
import readback.calc.name.ConstantName;

/** Whether this machine is fit for the job. Exit code 1 when something is bad. */
@Command(
        name = "selfcheck",
        mixinStandardHelpOptions = true,
        description = "Checks Java, recogniser, microphone, voice and disk, and says what to do about each.")
public final class SelfcheckCommand implements Callable<Integer> {

    private final Console console;

    @Option(names = "--json", description = "Print one line of JSON in place of the text.")
    private boolean json;

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

    @Spec
    private @Nullable CommandSpec spec;

    public SelfcheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<CheckResult> findings = new ArrayList<>();
        Consumer<CheckResult> told = finding -> {
            findings.add(finding);
            if (!json) {
                print(finding);
            }
        };
        if (spec != null && spec.defaultValueProvider() instanceof SettingsDefaults settings) {
            told.accept(settings.finding());
        }
        ClassArchive.ofProgram().map(SelfcheckCommand::classes).ifPresent(told);
        try (Voice speaking = speaking(told);
                Loudspeaker loudspeaker = live.loudspeaker()) {
            new SelfCheck(new SelfCheck.Equipment(
                            ear::tryOpen, live.microphone(), speaking, loudspeaker, session.sessions()))
                    .run(told);
            probes.findings(session.settings().units(), told);
            if (json) {
                console.out().println(json(findings));
            }
            return findings.stream().anyMatch(finding -> finding.grade() == CheckResult.Grade.BAD) ? 1 : 0;
        }
    }

    /** Whether Java starts from an archive of the classes; makes one where it does not. */
    private static CheckResult classes(ClassArchive archive) {
        if (archive.used()) {
            return new CheckResult(
                    "start", CheckResult.Grade.GOOD, "Classes are mapped from '" + archive.file() + "'.", "");
        }
        try {
            archive.make();
            return new CheckResult(
                    "start",
                    CheckResult.Grade.GOOD,
                    "Classes were put into '" + archive.file() + "': the next start is faster.",
                    "");
        } catch (IOException e) {
            return new CheckResult(
                    "start",
                    CheckResult.Grade.DOUBTFUL,
                    "Classes cannot be put into '" + archive.file() + "' (" + e.getMessage() + "): starts stay slower.",
                    "Make room there, or make it writable; all else works without.");
        }
    }

    /** The voice that a session would have; where that cannot be had, the other checks go on without one. */
    private Voice speaking(Consumer<CheckResult> told) {
        try {
            return voice.live();
        } catch (CommandFailure e) {
            told.accept(new CheckResult(
                    "voice",
                    CheckResult.Grade.BAD,
                    String.valueOf(e.getMessage()),
                    "Choose another voice (--voice), or leave it out."));
            return VoiceOptions.live("none");
        }
    }

    private void print(CheckResult finding) {
        console.out()
                .println(String.format(
                        Locale.ROOT,
                        "%-9s %-15s %s",
                        ConstantName.of(finding.grade()),
                        finding.subject(),
                        finding.what()));
        if (!finding.todo().isEmpty()) {
            console.out().println(" ".repeat(26) + finding.todo());
        }
        console.out().flush();
    }

    private static String json(List<CheckResult> findings) {
        ObjectNode result = new ObjectMapper().createObjectNode();
        ArrayNode list = result.putArray("findings");
        findings.forEach(finding -> list.addObject()
                .put("subject", finding.subject())
                .put("grade", ConstantName.of(finding.grade()))
                .put("what", finding.what())
                .put("todo", finding.todo()));
        return result.toString();
    }
}
