package readback.assistant.command;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import readback.assistant.archive.Summary;
import readback.assistant.record.RecordedSession;
import readback.assistant.report.Csv;
import readback.assistant.report.ParquetExport;
import readback.assistant.report.SessionExport;

/** What {@code sessions --export}, {@code --parquet} and {@code --csv} write while the sessions go by. One thread. */
final class ExportFiles {

    /** So many sessions between two lines about the progress. */
    private static final int STEP = 500;

    private final Console console;
    private final List<BufferedWriter> lines;
    private final Optional<BufferedWriter> table;
    private int done;

    private ExportFiles(Console console, List<BufferedWriter> lines, Optional<BufferedWriter> table) {
        this.console = console;
        this.lines = List.copyOf(lines);
        this.table = table;
        table.ifPresent(out -> write(out, new Csv(SessionExport.COLUMNS).toString()));
    }

    /**
     * The files that were asked for.
     *
     * @param lines a line of JSON a session
     * @param parquet the same as a Parquet file
     * @param table a row for each reading, verdict, piece of work and movement
     */
    record Targets(Optional<OutputFile> lines, Optional<OutputFile> parquet, Optional<OutputFile> table) {}

    /** What goes by while the files are open. */
    interface Passing<T> {
        T by(ExportFiles exports) throws IOException;
    }

    /** What is done while a file is open, or none. */
    private interface Writing<T> {
        T with(Optional<BufferedWriter> out) throws IOException;
    }

    /**
     * Opens the files that were asked for, lets the sessions go by, and leaves the files whole.
     *
     * @throws CommandFailure when a file cannot be written; at once where the means for it are missing
     */
    static <T> T writing(Console console, Targets targets, Passing<T> passing) throws IOException {
        Optional<ParquetExport> export = targets.parquet().map(any -> parquetExport());
        return text(
                console,
                targets.lines(),
                lines -> text(
                        console,
                        targets.table(),
                        rows -> parquet(
                                console,
                                targets.parquet(),
                                export,
                                between -> passing.by(new ExportFiles(
                                        console,
                                        Stream.concat(lines.stream(), between.stream())
                                                .toList(),
                                        rows)))));
    }

    private static <T> T text(Console console, Optional<OutputFile> file, Writing<T> writing) throws IOException {
        if (file.isEmpty()) {
            return writing.with(Optional.empty());
        }
        T result = file.get().write((BufferedWriter out) -> writing.with(Optional.of(out)));
        console.out().println("Written: " + file.get());
        return result;
    }

    /** Lines go into a file between, from which the whole Parquet file is made at the end. */
    private static <T> T parquet(
            Console console, Optional<OutputFile> file, Optional<ParquetExport> export, Writing<T> writing)
            throws IOException {
        if (file.isEmpty() || export.isEmpty()) {
            return writing.with(Optional.empty());
        }
        Path between = Files.createTempFile("readback", ".jsonl");
        try {
            T result;
            try (BufferedWriter out = Files.newBufferedWriter(between, StandardCharsets.UTF_8)) {
                result = writing.with(Optional.of(out));
            }
            file.get().make(part -> export.get().write(between, part));
            console.out().println("Written: " + file.get());
            return result;
        } finally {
            Files.deleteIfExists(between);
        }
    }

    private static ParquetExport parquetExport() {
        Optional<Path> libraries =
                Optional.ofNullable(System.getProperty(VoiceOptions.HOME)).map(home -> Path.of(home, "lib"));
        return ParquetExport.with(libraries)
                .orElseThrow(
                        () -> new CommandFailure("--parquet needs DuckDB's driver, which does not come with Readback"
                                + " because of its size: put " + ParquetExport.JAR
                                + " (org.duckdb:duckdb_jdbc of Maven Central) into "
                                + libraries.map(Path::toString).orElse("the folder lib of Readback")
                                + ", or use --export, whose lines DuckDB and Spark read as they are."));
    }

    /** Adds a session; one whose record cannot be read any more is told. */
    void add(Summary summary, Path record) {
        if (lines.isEmpty() && table.isEmpty()) {
            return;
        }
        try {
            RecordedSession recorded = SessionFiles.read(record);
            SessionExport export = SessionExport.of(summary, recorded);
            if (!lines.isEmpty()) {
                String line = export.line() + "\n";
                lines.forEach(out -> write(out, line));
            }
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
