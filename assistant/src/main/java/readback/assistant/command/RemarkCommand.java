package readback.assistant.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;

/** Adds a supervisor's remark beside a session's record. */
@Command(
        name = "remark",
        mixinStandardHelpOptions = true,
        description = {
            "Adds a remark on a recorded session, in a file of its own: the record itself never changes.",
            "The remark names the hash of the record that was seen and appears in the report."
        })
public final class RemarkCommand implements Callable<Integer> {

    private static final int LONGEST = 10_000;

    private final Console console;
    private final Clock clock;

    @Parameters(index = "0", paramLabel = "SESSION", description = "Folder of the session.")
    private Path session = Path.of(".");

    @Parameters(index = "1", paramLabel = "TEXT", description = "The remark.")
    private String text = "";

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who makes it.")
    private @Nullable String by;

    public RemarkCommand(Console console) {
        this.console = console;
        this.clock = Clock.systemUTC();
    }

    @Override
    public Integer call() {
        if (text.isBlank() || by == null || by.isBlank()) {
            throw new CommandFailure("A remark has a text and a name: readback remark SESSION \"text\" --by NAME.");
        }
        if (text.length() > LONGEST) {
            throw new CommandFailure(
                    "A remark has " + LONGEST + " characters at most, this one has " + text.length() + ": shorten it.");
        }
        RecordedSession recorded = SessionFiles.read(session);
        try {
            RemarkFile.add(recorded, clock.instant(), by, text);
        } catch (RecordUnavailableException e) {
            throw new CommandFailure(e);
        }
        console.out()
                .println(
                        "Remark: " + recorded.folder().resolve(RemarkFile.FILE) + ", on the record " + recorded.hash());
        recorded.fault().ifPresent(fault -> console.complain("the record does not hold: " + fault));
        return 0;
    }
}
