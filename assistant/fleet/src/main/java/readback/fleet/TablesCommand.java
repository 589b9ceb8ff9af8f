package readback.fleet;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.count_if;
import static org.apache.spark.sql.functions.max;

import java.io.PrintStream;
import java.nio.file.Path;
import java.sql.Timestamp;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import readback.assistant.replay.Visible;

/** Makes tables of all sessions. */
@Command(
        name = "tables",
        mixinStandardHelpOptions = true,
        description = {
            "Makes Parquet tables of the sessions in the bundles: sessions, readings, verdicts, moves, cautions, doubts;"
                    + " a folder for each month.",
            "Each session counts once, with the longest record of it. Give all bundles every time: what comes late finds"
                    + " its month, and what comes twice changes nothing."
        })
final class TablesCommand implements Callable<Integer> {

    private final PrintStream out;
    private final PrintStream err;

    @Parameters(arity = "1..*", paramLabel = "BUNDLES", description = "Bundles, or folders with bundles.")
    private List<String> bundles = new ArrayList<>();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FOLDER",
            description = "Where the tables go; tables that lie there are replaced.")
    private String folder = "";

    @Option(
            names = "--hash-names",
            paramLabel = "KEYFILE",
            description = "In place of the names of technicians, customers, sites and units write their HMAC-SHA-256"
                    + " under the key in this file. Whoever has the key can try names: keep it.")
    private @Nullable Path keyFile;

    @Mixin
    private EngineOptions options = new EngineOptions();

    TablesCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Pseudonyms names = keyFile == null ? Pseudonyms.NONE : Pseudonyms.of(keyFile);
        SparkSession engine = options.start(err);
        List<String> found = BundleStore.find(bundles);
        TablesFolder place = new TablesFolder(engine, folder);
        place.mustBeWritable();
        Engine.doing(engine, "Walking the chains");
        Copies copies = Copies.in(engine, found);
        List<Row> troubles =
                copies.troubles().sort(Copies.BUNDLE, Copies.TROUBLE).collectAsList();
        troubles.forEach(row -> err.println(Visible.text(
                "readback-fleet: " + row.getString(0) + " " + row.getString(1) + "; what holds of it is taken.")));
        TablesFolder.About about = place.replace(part -> {
            Tables tables = Tables.of(engine, copies.kept(), Math.min(found.size(), Copies.MOST_PIECES), names, part);
            TablesFolder.About sums = about(tables, names);
            tables.write();
            return sums;
        });
        out.println("Written: " + place + " with " + about.sessions() + " sessions, of which " + about.damaged()
                + " do not hold and " + about.forked() + " go on in two ways; the names of people, places and"
                + " equipment are " + (about.hashed() ? "hashed with HMAC-SHA-256." : "as they were given."));
        return troubles.isEmpty() ? 0 : 1;
    }

    private static TablesFolder.About about(Tables tables, Pseudonyms names) {
        Row sums = tables.sessions()
                .agg(
                        functions.count(functions.lit(1)),
                        count_if(col("fault").notEqual("")),
                        count_if(col("forked")),
                        max(col("started")))
                .head();
        if (sums.getLong(0) == 0) {
            throw new FleetFailure("None of the bundles holds a session that can be read: verify them first.");
        }
        Timestamp latest = sums.getTimestamp(3);
        return new TablesFolder.About(
                sums.getLong(0),
                sums.getLong(1),
                sums.getLong(2),
                latest.toInstant().toString(),
                names.none() ? TablesFolder.About.PLAIN : TablesFolder.About.HASHED,
                names.mark().orElse(""));
    }
}
