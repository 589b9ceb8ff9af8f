package readback.assistant.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.practice.World;
import readback.assistant.record.About;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.replay.VerificationSentences;
import readback.assistant.replay.Visible;
import readback.assistant.report.JobReport;
import readback.assistant.report.ReportJson;
import readback.assistant.report.ReportPage;
import readback.assistant.report.ReportTable;
import readback.assistant.report.SheetPage;
import readback.assistant.session.Fingerprints;
import readback.calc.quantity.UnitSetting;

/** Makes the report of a session. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        description = {
            "Makes the report of a recorded session: a page for people, tables for other programs.",
            "The page needs no other file and prints well on paper."
        },
        footer = {
            "",
            "Columns of --csv: session, event, at, kind (answer, verdict, caution), name, content, value, unit, si_value,"
                    + " si_unit, superseded."
        })
public final class ReportCommand implements Callable<Integer> {

    private final Console console;
    private final Clock clock;

    @Parameters(paramLabel = "SESSION", description = "Folder of the session, or its session.jsonl.")
    private Path session = Path.of(".");

    @Option(
            names = {"-o", "--output"},
            paramLabel = "FILE",
            description = "Write the page here, as HTML.")
    private @Nullable Path page;

    @Option(names = "--sheet", paramLabel = "FILE", description = "Write one sheet for the customer, as HTML.")
    private @Nullable Path sheet;

    @Option(names = "--csv", paramLabel = "FILE", description = "Write every answer, verdict and caution as a table.")
    private @Nullable Path csv;

    @Option(names = "--json", paramLabel = "FILE", description = "Write the whole report as one JSON object.")
    private @Nullable Path json;

    @Mixin
    private OverwriteOption overwrite = new OverwriteOption();

    public ReportCommand(Console console) {
        this.console = console;
        this.clock = Clock.systemUTC();
    }

    @Override
    public Integer call() {
        if (page == null && sheet == null && csv == null && json == null) {
            throw new CommandFailure("Say what to write: -o FILE for the page, --sheet FILE for the customer's sheet,"
                    + " --csv FILE or --json FILE for a table.");
        }
        Optional<OutputFile> pageFile = file(page);
        Optional<OutputFile> sheetFile = file(sheet);
        Optional<OutputFile> csvFile = file(csv);
        Optional<OutputFile> jsonFile = file(json);
        RecordedSession recorded = SessionFiles.readWithEvents(session);
        if (sheet != null && recorded.header().about().containsKey(About.PRACTICE)) {
            throw new CommandFailure("That session was practice: there is no customer to give a sheet to. The page of"
                    + " --output tells how it went.");
        }
        Desk desk = Desk.standard();
        JobReport report = report(desk, recorded);
        pageFile.ifPresent(
                file -> write(file, ReportPage.of(report, desk.language(), clock.instant(), debrief(desk, recorded))));
        sheetFile.ifPresent(file -> write(file, SheetPage.of(report, desk.language(), clock.instant())));
        csvFile.ifPresent(file -> write(file, ReportTable.csv(report)));
        jsonFile.ifPresent(file -> write(file, ReportJson.of(report) + "\n"));
        report.verification().fault().ifPresent(fault -> console.complain("the record does not hold: " + fault));
        report.verification()
                .difference()
                .map(found -> report.verification().byAnotherVersion()
                        ? new VerificationSentences(desk.language()).otherVersion(report.verification(), found)
                        : "the replay differs first at " + found)
                .ifPresent(found -> console.complain(Visible.text(found)));
        return 0;
    }

    /** What is said about a practice call; nothing about real work. */
    private static List<String> debrief(Desk desk, RecordedSession recorded) {
        UnitSetting units = recorded.settings().orElse(SessionSettings.STANDARD).units();
        return World.after(recorded, desk.dialogue()).stream()
                .flatMap(world -> world.debrief().messages().stream())
                .map(message -> desk.wording().shown(message, units))
                .toList();
    }

    private static JobReport report(Desk desk, RecordedSession recorded) {
        try {
            return JobReport.of(
                    desk.dialogue(),
                    desk.wording(),
                    Fingerprints.of(desk.checklists()),
                    recorded,
                    RemarkFile.on(recorded));
        } catch (RecordUnavailableException e) {
            throw new CommandFailure(e);
        }
    }

    private Optional<OutputFile> file(@Nullable Path path) {
        return Optional.ofNullable(path).map(each -> OutputFile.at(each, overwrite.force()));
    }

    private void write(OutputFile file, String text) {
        file.write(text);
        console.out().println("Written: " + file);
    }
}
