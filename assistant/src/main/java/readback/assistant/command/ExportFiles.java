package readback.assistant.command;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import readback.assistant.archive.Summary;
import readback.assistant.record.RecordedSession;
import readback.assistant.report.Csv;
import readback.assistant.report.SessionExport;

/** What {@code sessions --export} and {@code --csv} write while the sessions go by. One thread. */
final class ExportFiles {

    /** So many sessions between two lines about the progress. */
    private static final int STEP = 500;

    private final Console console;
    private final Optional<BufferedWriter> lines;
    private final Optional<BufferedWriter> table;
    private int done;

    /** @param table gets its header line at once */
    ExportFiles(Console console, Optional<BufferedWriter> lines, Optional<BufferedWriter> table) {
        this.console = console;
        this.lines = lines;
        this.table = table;
        table.ifPresent(out -> write(out, new Csv(SessionExport.COLUMNS).toString()));
    }

    /** Adds a session; one whose record cannot be read any more is told. */
    void add(Summary summary, Path record) {
        if (lines.isEmpty() && table.isEmpty()) {
            return;
        }
        try {
            RecordedSession recorded = SessionFiles.read(record);
            SessionExport export = SessionExport.of(summary, recorded);
            lines.ifPresent(out -> write(out, export.line() + "\n"));
            table.ifPresent(out -> write(out, rows(export)));
        } catch (CommandFailure e) {
            console.complain("not exported: " + summary.session() + ": " + e.getMessage());
        }
        done++;
        if (done % STEP == 0) {
            console.err().println(done + " sessions exported ...");
        }
    }

    /** The rows without the header line. */
    private static String rows(SessionExport export) {
        Csv csv = new Csv(List.copyOf(SessionExport.COLUMNS));
        export.rows(csv);
        String text = csv.toString();
        return text.substring(text.indexOf("\r\n") + 2);
    }

    private static void write(BufferedWriter out, String text) {
        try {
            out.write(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e.getMessage(), e);
        }
    }
}
