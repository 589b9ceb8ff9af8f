package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import readback.assistant.record.FolderLedger;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.calc.name.ConstantName;

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
        refuseWhereRemarksAreMissed(recorded);
        try {
            RemarkFile.add(recorded, clock.instant(), by, text);
            note(recorded);
        } catch (RecordUnavailableException e) {
            throw new CommandFailure(e);
        }
        console.out()
                .println(
                        "Remark: " + recorded.folder().resolve(RemarkFile.FILE) + ", on the record " + recorded.hash());
        recorded.fault().ifPresent(fault -> console.complain("the record does not hold: " + fault));
        return 0;
    }

    /** A further remark would cover in the ledger that others were taken away. */
    private static void refuseWhereRemarksAreMissed(RecordedSession recorded) {
        try {
            RemarkFile.missed(recorded).ifPresent(missed -> {
                throw new CommandFailure("The remarks on '" + recorded.header().session() + "' are "
                        + ConstantName.of(missed.finding()) + ": there were " + missed.remarks()
                        + ". Nothing is added; keep the folder as evidence.");
            });
        } catch (IOException e) {
            throw new CommandFailure("The ledger of the sessions cannot be read: " + e.getMessage() + ".");
        }
    }

    /** Keeps in the folder's ledger what the remarks are now, so that one that is taken away later is missed. */
    private void note(RecordedSession recorded) throws RecordUnavailableException {
        Path sessions = recorded.folder().getParent();
        if (sessions != null) {
            FolderLedger.in(sessions)
                    .note(clock.instant(), RemarkFile.anchor(recorded))
                    .ifPresent(why -> console.complain("the ledger of '" + sessions + "' was not written (" + why
                            + "): if this remark is taken away later, nobody will notice."));
        }
    }
}
