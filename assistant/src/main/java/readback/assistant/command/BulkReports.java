package readback.assistant.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.report.JobReport;
import readback.assistant.report.ReportPage;
import readback.assistant.session.Fingerprints;

/**
 * The reports of many sessions, a page each in one folder, with a line now and then about how far it is. One thread.
 */
final class BulkReports {

    /** So many reports between two lines about the progress. */
    private static final int STEP = 50;

    private final Console console;
    private final Clock clock;
    private final Path folder;
    private final boolean over;
    private final Desk desk = Desk.standard();
    private final Set<String> written = new HashSet<>();
    private int failed;

    /** @param over whether pages that are there already may be written over */
    BulkReports(Console console, Clock clock, Path folder, boolean over) {
        this.console = console;
        this.clock = clock;
        this.folder = folder;
        this.over = over;
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new CommandFailure("The folder '" + folder + "' cannot be made: " + e.getMessage() + ".");
        }
    }

    /** Writes the report of a session; one that cannot be made is told and keeps no other from being made. */
    void add(String session, Path record) {
        if (!session.matches("[A-Za-z0-9._-]+") || session.startsWith(".")) {
            fail(session, "its name is not that of a session");
            return;
        }
        OutputFile file = OutputFile.at(folder.resolve(session + ".html"), over);
        try {
            RecordedSession recorded = SessionFiles.readWithEvents(record);
            JobReport report = JobReport.of(
                    desk.dialogue(),
                    desk.wording(),
                    Fingerprints.of(desk.checklists()),
                    recorded,
                    RemarkFile.on(recorded));
            file.write(ReportPage.of(report, desk.language(), clock.instant()));
            written.add(session);
        } catch (CommandFailure | RecordUnavailableException | IllegalArgumentException e) {
            fail(session, String.valueOf(e.getMessage()));
        }
        if ((written.size() + failed) % STEP == 0) {
            console.err().println((written.size() + failed) + " sessions done, " + failed + " without a report ...");
        }
    }

    private void fail(String session, String why) {
        failed++;
        console.complain("no report of " + session + ": " + why);
    }

    /** Where the report of a session lies, seen from a page; empty where none was written. */
    Optional<String> link(Path page, String session) {
        if (!written.contains(session)) {
            return Optional.empty();
        }
        Path from = page.toAbsolutePath().normalize().getParent();
        Path to = folder.toAbsolutePath().normalize().resolve(session + ".html");
        Path relative = from == null ? to : from.relativize(to);
        return Optional.of(relative.toString().replace('\\', '/').replace(" ", "%20"));
    }

    /** How many pages were written. */
    int count() {
        return written.size();
    }
}
