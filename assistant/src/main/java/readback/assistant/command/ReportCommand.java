package readback.assistant.command;

import java.math.BigDecimal;
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
import readback.assistant.report.CommissioningPage;
import readback.assistant.report.JobReport;
import readback.assistant.report.ReportJson;
import readback.assistant.report.ReportPage;
import readback.assistant.report.ReportTable;
import readback.assistant.report.SheetPage;
import readback.assistant.session.Fingerprints;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Unit;
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

    @Option(
            names = "--commissioning",
            paramLabel = "FILE",
            description = "Write the record of a new installation, as HTML: what grading one asks for, as far as it was"
                    + " measured.")
    private @Nullable Path commissioning;

    @Option(
            names = "--design-airflow",
            paramLabel = "CFM",
            description = "The designer's airflow in cubic feet a minute, which --commissioning grades the measured one"
                    + " by.")
    private @Nullable BigDecimal designAirflow;

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
        if (page == null && sheet == null && commissioning == null && csv == null && json == null) {
            throw new CommandFailure("Say what to write: -o FILE for the page, --sheet FILE for the customer's sheet,"
                    + " --commissioning FILE for the record of a new installation, --csv FILE or --json FILE for a"
                    + " table.");
        }
        Optional<Reading> design = designAirflow();
        Optional<OutputFile> pageFile = file(page);
        Optional<OutputFile> sheetFile = file(sheet);
        Optional<OutputFile> commissioningFile = file(commissioning);
        Optional<OutputFile> csvFile = file(csv);
        Optional<OutputFile> jsonFile = file(json);
        RecordedSession recorded = SessionFiles.readWithEvents(session);
        if (sheet != null && recorded.header().about().containsKey(About.PRACTICE)) {
            throw new CommandFailure("That session was practice: there is no customer to give a sheet to. The page of"
                    + " --output tells how it went.");
        }
        if (commissioning != null && recorded.header().about().containsKey(About.PRACTICE)) {
            throw new CommandFailure("That session was practice: there is no installation to commission. The page of"
                    + " --output tells how it went.");
        }
        Desk desk = Desk.standard();
        JobReport report = report(desk, recorded);
        pageFile.ifPresent(
                file -> write(file, ReportPage.of(report, desk.language(), clock.instant(), debrief(desk, recorded))));
        sheetFile.ifPresent(file -> write(file, SheetPage.of(report, desk.language(), clock.instant())));
        commissioningFile.ifPresent(
                file -> write(file, CommissioningPage.of(report, design, desk.language(), clock.instant())));
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

    /** The designer's airflow; only the commissioning record has a use for it. */
    private Optional<Reading> designAirflow() {
        if (designAirflow == null) {
            return Optional.empty();
        }
        if (designAirflow.signum() <= 0) {
            throw new CommandFailure("--design-airflow " + designAirflow.toPlainString() + " is no airflow: it must be"
                    + " above zero, in cubic feet a minute, as in --design-airflow 1200.");
        }
        if (commissioning == null) {
            throw new CommandFailure(
                    "--design-airflow is for the commissioning record: add --commissioning FILE, or leave it out.");
        }
        return Optional.of(new Reading(Quantity.AIRFLOW, designAirflow, Unit.CUBIC_FOOT_PER_MINUTE));
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
