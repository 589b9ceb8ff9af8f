package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import readback.assistant.archive.AnchorLines;
import readback.assistant.archive.Archive;
import readback.assistant.archive.Gathering;
import readback.assistant.archive.SessionFilter;
import readback.assistant.archive.Summary;
import readback.assistant.archive.Sums;
import readback.assistant.record.Anchor;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.replay.Visible;
import readback.assistant.report.IndexPage;
import readback.prompts.text.Language;

/** Lists, chooses and sums many sessions. */
@Command(
        name = "sessions",
        mixinStandardHelpOptions = true,
        description = {
            "Lists the recorded sessions of folders, one a line, and sums the refrigerant moved.",
            "All conditions together choose which sessions count."
        },
        footer = {
            "",
            "Each line of --export is a JSON object, each row of --parquet has the same: session, started, zone, minutes,"
                    + " refrigerant, metering_device, technician, appliance, place, customer, tablet, practice,"
                    + " full_charge_kg, verdict, borderline, charge, outcomes, doubts, cautions, added_kg, recovered_kg"
                    + " (null when nobody said), cylinders, leak_test, work, events, closed, hash, fault, readings,"
                    + " verdicts, moves."
        })
public final class SessionsCommand implements Callable<Integer> {

    private static final int MOST_ROWS_IN_PAGE = 2000;
    private final Language language = Language.english();
    private final SessionRow rows = new SessionRow(language);

    private final Console console;
    private final Clock clock;

    @Mixin
    private SessionFolders folders = new SessionFolders();

    @Option(
            names = "--from",
            paramLabel = "DATE",
            description = "Started on this day or later, as in 2026-07-01 (UTC).")
    private @Nullable String from;

    @Option(names = "--to", paramLabel = "DATE", description = "Started on this day or earlier.")
    private @Nullable String to;

    @Option(
            names = "--verdict",
            paramLabel = "NAME",
            description = "in-tolerance, add, recover, weigh-in, no-valid-test, do-not-charge or none.")
    private @Nullable String verdict;

    @Option(names = "--doubt", description = "With something doubtful.")
    private boolean doubt;

    @Option(names = "--caution", paramLabel = "NAME", description = "With this caution, as in liquid-at-compressor.")
    private @Nullable String caution;

    @Option(names = "--refrigerant", paramLabel = "NAME", description = "With this refrigerant.")
    private @Nullable String refrigerant;

    @Option(
            names = "--technician",
            paramLabel = "NAME",
            description = "By this technician; a part of the name is enough.")
    private @Nullable String technician;

    @Option(
            names = "--appliance",
            paramLabel = "NAME",
            description = "On this equipment; a part of the name is enough.")
    private @Nullable String appliance;

    @Option(names = "--damaged", description = "Whose record does not hold.")
    private boolean damaged;

    @Option(
            names = "--practice",
            description = "Practice at simulated units, in place of real work. It is never counted among it.")
    private boolean practice;

    @Option(
            names = "--check",
            description =
                    "Read every record anew, check its chain, look for what no version writes, and compare records and"
                            + " remarks with the folder's ledger. Exit code 1 when one is gone, shortened, rewritten or odd.")
    private boolean check;

    @Option(
            names = "--figures",
            description = "Below each session what was measured for its verdicts and what followed, in the units of the"
                    + " session and in those of the SI.")
    private boolean figures;

    @Option(names = "--sums", description = "Sums only: by verdict, cylinder, equipment and refrigerant.")
    private boolean sumsOnly;

    @Option(names = "--html", paramLabel = "FILE", description = "Write the list and its sums as a page.")
    private @Nullable Path html;

    @Option(
            names = "--reports",
            paramLabel = "FOLDER",
            description = "Write the report of each session into this folder; the page of --html links to them.")
    private @Nullable Path reports;

    @Option(
            names = "--export",
            paramLabel = "FILE",
            description = "Write one line of JSON a session, with readings, verdicts and movements.")
    private @Nullable Path export;

    @Option(
            names = "--parquet",
            paramLabel = "FILE",
            description = "Write the same as --export as a Parquet file, a row a session. Needs DuckDB's driver,"
                    + " duckdb_jdbc-VERSION.jar, in the folder lib of Readback.")
    private @Nullable Path parquet;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "Write a table with a row for each reading, verdict and movement of each session.")
    private @Nullable Path csv;

    @Option(
            names = "--anchors",
            paramLabel = "FILE",
            description = "Write what each record is now, one line of JSON a session: keep it elsewhere.")
    private @Nullable Path anchors;

    @Option(
            names = "--against",
            paramLabel = "FILE",
            description = "Compare the records with anchors written before. Exit code 1 when one is gone, shortened or"
                    + " rewritten.")
    private @Nullable Path against;

    @Option(
            names = "--pack",
            paramLabel = "FOLDER",
            description = "Put every record, byte for byte, into bundles in this folder, for the many tablets of a"
                    + " fleet; nothing is listed, and no condition counts. What was packed before is left out.")
    private @Nullable Path pack;

    @Option(
            names = "--per",
            paramLabel = "N",
            defaultValue = "500",
            description = "Sessions in a bundle of --pack. Default: ${DEFAULT-VALUE}.")
    private int per;

    @Mixin
    private OverwriteOption overwrite = new OverwriteOption();

    /** Practice that was left out. */
    private int left;

    public SessionsCommand(Console console) {
        this.console = console;
        this.clock = Clock.systemUTC();
    }

    @Override
    public Integer call() {
        if (pack != null) {
            return pack(new BundleFiles(console, pack, per));
        }
        SessionFilter choice = choice();
        Optional<OutputFile> pageFile = file(html);
        ExportFiles.Targets targets = new ExportFiles.Targets(file(export), file(parquet), file(csv));
        Optional<OutputFile> anchorFile = file(anchors);
        Optional<BulkReports> bulk =
                Optional.ofNullable(reports).map(each -> new BulkReports(console, clock, each, overwrite.force()));
        Sums sums = new Sums();
        IndexPage page = new IndexPage(
                language,
                MOST_ROWS_IN_PAGE,
                session -> Optional.ofNullable(html).flatMap(at -> bulk.flatMap(each -> each.link(at, session))));
        List<Anchor> now = new ArrayList<>();
        List<Anchor> remarks = new ArrayList<>();
        try {
            Gathering everything = folders.gathering();
            SessionCheck checking = new SessionCheck(console, everything);
            Gathering gathering = check || anchors != null
                    ? everything.checked(recorded -> {
                        checking.examine(recorded);
                        remarks(recorded).ifPresent(remarks::add);
                    })
                    : everything;
            Archive.Listing listing = list(
                    gathering,
                    choice,
                    (summary, place) -> {
                        take(summary, sums, page);
                        bulk.ifPresent(each -> each.add(summary.session(), place));
                        now.add(Anchor.ofRecord(String.valueOf(place.getFileName()), summary.events(), summary.hash()));
                    },
                    targets);
            listing.troubles().forEach(each -> console.complain(Visible.text(each)));
            console.out()
                    .println(language.label("report.list.count", sums.sessions(), listing.sessions(), sums.doubtful()));
            if (left > 0) {
                console.out().println(language.label("report.list.practice", left));
            }
            if (sumsOnly) {
                print(sums);
            }
            bulk.ifPresent(each -> console.out().println("Written: " + each.count() + " reports in " + reports));
            pageFile.ifPresent(file -> {
                file.write(page.page(choice, sums, listing, clock.instant()));
                console.out().println("Written: " + file);
            });
            anchorFile.ifPresent(file -> {
                file.write(Stream.concat(now.stream(), remarks.stream())
                        .map(anchor -> AnchorLines.of(anchor) + "\n")
                        .collect(Collectors.joining()));
                console.out().println("Written: " + file);
            });
            return holds(checking, now) ? 0 : 1;
        } catch (IOException e) {
            throw folders.unlisted(e);
        }
    }

    private int pack(BundleFiles bundles) {
        try {
            return bundles.pack(folders.gathering().folders());
        } catch (IOException e) {
            throw folders.unlisted(e);
        }
    }

    /** Whether every record holds what the ledger, and the anchors given, know of it; tells of those that do not. */
    private boolean holds(SessionCheck checking, List<Anchor> now) throws IOException {
        boolean holds = true;
        if (check) {
            boolean clean = checking.nothingFound();
            holds = checking.ledgerHolds(now.stream().map(Anchor::session).toList()) && clean;
        }
        return against == null ? holds : checking.hold(anchors(against), "'" + against + "'") && holds;
    }

    /** What the remarks on a record are now; empty where there are none that hold. */
    private static Optional<Anchor> remarks(RecordedSession recorded) {
        try {
            return Optional.of(RemarkFile.anchor(recorded)).filter(anchor -> anchor.events() > 0);
        } catch (RecordUnavailableException e) {
            return Optional.empty();
        }
    }

    private static List<Anchor> anchors(Path file) {
        try {
            return AnchorLines.read(file);
        } catch (IOException e) {
            throw new CommandFailure("'" + file + "' cannot be compared with (" + e.getMessage()
                    + "): name a file that --anchors wrote.");
        }
    }

    private Archive.Listing list(
            Gathering gathering, SessionFilter choice, BiConsumer<Summary, Path> taker, ExportFiles.Targets targets)
            throws IOException {
        return ExportFiles.writing(
                console,
                targets,
                exports -> gathering.each((summary, place) -> {
                    left += practice || summary.practice().isEmpty() ? 0 : 1;
                    if (choice.takes(summary)) {
                        taker.accept(summary, place);
                        exports.add(summary, place);
                    }
                }));
    }

    private Optional<OutputFile> file(@Nullable Path path) {
        return Optional.ofNullable(path).map(each -> OutputFile.at(each, overwrite.force()));
    }

    private void take(Summary summary, Sums sums, IndexPage page) {
        sums.add(summary);
        page.add(summary);
        if (!sumsOnly && export == null && parquet == null && csv == null && html == null && reports == null) {
            console.out().println(rows.line(summary));
            if (figures) {
                rows.figures(summary).forEach(console.out()::println);
            }
        }
    }

    private void print(Sums sums) {
        sums.byVerdict()
                .forEach((kind, count) -> console.out().printf(Locale.ROOT, "%8d  %s%n", count, rows.verdict(kind)));
        print("report.list.refrigerant", sums.byRefrigerant());
        print("report.list.cylinder", sums.byCylinder());
        print("report.list.equipment", sums.byAppliance());
    }

    private void print(String what, Map<String, Sums.Amount> amounts) {
        amounts.forEach((name, amount) -> console.out()
                .println(language.label(
                        "report.list.amount",
                        language.label(what),
                        name.isEmpty() ? language.label("report.cylinder.unnamed") : Visible.text(name),
                        kilograms(amount.addedKilograms()),
                        kilograms(amount.recoveredKilograms()))));
    }

    private static String kilograms(double amount) {
        return String.format(Locale.ROOT, "%.3f kg", amount);
    }

    private SessionFilter choice() {
        SessionFilter choice = SessionFilter.ALL;
        choice = from == null ? choice : choice.from(day("--from", from));
        choice = to == null ? choice : choice.before(day("--to", to).plusSeconds(24 * 60 * 60));
        choice = verdict == null ? choice : choice.verdict(verdict.toLowerCase(Locale.ROOT));
        choice = doubt ? choice.doubtful() : choice;
        choice = caution == null ? choice : choice.caution(caution.toLowerCase(Locale.ROOT));
        choice = refrigerant == null ? choice : choice.refrigerant(SessionOptions.designation(refrigerant));
        choice = technician == null ? choice : choice.technician(technician);
        choice = appliance == null ? choice : choice.appliance(appliance);
        if (practice) {
            choice = choice.practice();
        }
        return damaged ? choice.damaged() : choice;
    }

    private static Instant day(String option, String text) {
        try {
            return LocalDate.parse(text).atStartOfDay(ZoneOffset.UTC).toInstant();
        } catch (DateTimeParseException e) {
            throw new CommandFailure(option + " is a day as in 2026-07-01, not '" + text + "'.");
        }
    }
}
