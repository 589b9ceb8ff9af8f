package readback.fleet;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import readback.assistant.archive.AnchorLines;
import readback.assistant.record.Anchor;
import readback.assistant.replay.Visible;

/** Verifies the chains of all records. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = {
            "Walks the chain of every record in the bundles and tells each line that was changed, each session that goes"
                    + " on in two ways, and bundles that are not as they were packed.",
            "Exit code 1 when something was found."
        })
final class VerifyCommand implements Callable<Integer> {

    /** More findings of a kind are counted, not listed. */
    private static final int MOST_LISTED = 10_000;

    private final PrintStream out;
    private final PrintStream err;

    @Parameters(arity = "1..*", paramLabel = "BUNDLES", description = "Bundles, or folders with bundles.")
    private List<String> bundles = new ArrayList<>();

    @Option(
            names = "--anchors",
            paramLabel = "FILE",
            description = "Also compare with anchors that 'readback sessions --anchors' wrote: records that are gone,"
                    + " shortened or rewritten.")
    private @Nullable Path anchors;

    @Mixin
    private EngineOptions options = new EngineOptions();

    VerifyCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        List<Anchor> known = anchors == null ? List.of() : anchors(anchors);
        SparkSession engine = options.start(err);
        List<String> found = BundleStore.find(bundles);
        Engine.doing(engine, "Walking the chains");
        Copies copies = Copies.in(engine, found);
        Copies.Counts counts = copies.counts();
        tell(copies.troubles(), counts.troubles(), VerifyCommand::trouble);
        tell(copies.broken(), counts.broken(), VerifyCommand::broken);
        long forks = copies.forks().count();
        tell(copies.forks(), forks, VerifyCommand::fork);
        out.println(counts.records() + " records of " + counts.sessions() + " sessions in " + found.size()
                + " bundles: " + counts.broken() + " do not hold, " + forks + " sessions go on in two ways, "
                + counts.repeated() + " records lie there more than once, " + counts.troubles()
                + " findings about bundles.");
        long lost = anchors == null ? 0 : compare(engine, copies, known, anchors);
        return counts.troubles() + counts.broken() + forks + lost == 0 ? 0 : 1;
    }

    private long compare(SparkSession engine, Copies copies, List<Anchor> known, Path file) {
        Engine.doing(engine, "Comparing with the anchors");
        List<Anchor> records = known.stream()
                .filter(each -> each.of() == Anchor.Subject.RECORD)
                .toList();
        List<Row> lost = AnchorCheck.broken(engine, copies, records).collectAsList();
        tell(engine.createDataFrame(lost, AnchorCheck.FINDINGS), lost.size(), VerifyCommand::lost);
        out.println((records.size() - lost.size()) + " of " + records.size() + " records hold what '" + file
                + "' knows of them.");
        if (records.size() < known.size()) {
            out.println(
                    (known.size() - records.size())
                            + " anchors are of remarks, which are in no bundle: compare them with 'readback sessions --against'.");
        }
        return lost.size();
    }

    private static List<Anchor> anchors(Path file) {
        try {
            return AnchorLines.read(file);
        } catch (IOException e) {
            throw new FleetFailure(
                    "'" + file + "' cannot be compared with (" + e.getMessage()
                            + "): name a file that 'readback sessions --anchors' wrote.",
                    e);
        }
    }

    /** What is said of a row. */
    private interface Sentence {
        String of(Row row);
    }

    /** Tells each row in a line, sorted. */
    private void tell(Dataset<Row> rows, long count, Sentence sentence) {
        if (count == 0) {
            return;
        }
        rows.limit(MOST_LISTED).collectAsList().stream()
                .map(sentence::of)
                .sorted()
                .forEach(line -> out.println(Visible.text(line)));
        if (count > MOST_LISTED) {
            out.println("... and " + (count - MOST_LISTED) + " more of the kind");
        }
    }

    private static String trouble(Row row) {
        return "bundle   " + name(row.getString(0)) + " " + row.getString(1);
    }

    private static String broken(Row row) {
        return "broken   " + session(row) + "  line " + row.getInt(3) + " " + row.getString(4) + "  ("
                + name(row.getString(1)) + " from byte " + row.getInt(2) + ")";
    }

    private static String fork(Row row) {
        return "fork     " + session(row) + "  goes on in two ways after line " + row.getInt(1) + ": in "
                + name(row.getString(2)) + " and in " + name(row.getString(3))
                + "; one of them was rewritten, believe neither before the tablets were looked at";
    }

    private static String lost(Row row) {
        Anchor.Finding finding = Anchor.Finding.valueOf(row.getString(2));
        String what = switch (finding) {
            case GONE -> "is in no bundle";
            case SHORTENED -> "does not reach so far any more";
            case REWRITTEN -> "is another one up to there";
            case HOLDS -> "holds";
        };
        return "anchor   " + session(row) + "  had " + row.getInt(1) + " events and " + what;
    }

    private static String session(Row row) {
        return row.getString(0).isEmpty() ? "(a session without a name)" : row.getString(0);
    }

    private static String name(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }
}
