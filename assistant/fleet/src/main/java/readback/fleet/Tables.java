package readback.fleet;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.explode;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.hadoop.fs.Path;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.StructType;

/**
 * The tables of a fleet: a row for each session, reading, verdict, movement, caution and doubt, in a folder for each
 * month in which a session began (UTC). They follow from the set of the bundles alone: the same bundles once more, in
 * another order or under other names give the same tables, and a late one gives those of all together.
 */
final class Tables {

    static final String MONTH = "month";
    static final String SESSIONS = "sessions";

    /** Tables that have a row for each thing in a session, with the form of that row. */
    static final Map<String, StructType> DETAILS = Map.of(
            "readings", SessionRows.READING,
            "verdicts", SessionRows.VERDICT,
            "moves", SessionRows.MOVE,
            "cautions", SessionRows.CAUTION,
            "doubts", SessionRows.DOUBT);

    private static final String SESSION = "session";
    private static final String EVENT = "event";
    private static final String ONE = "one";

    /** No file beside the rows says that all are there: the folder as a whole appears when they are. */
    private static final String NO_MARKS = "mapreduce.fileoutputcommitter.marksuccessfuljobs";

    /** A month of a very large fleet is split into files of so many rows. */
    private static final int MOST_ROWS_IN_FILE = 2_000_000;

    private static final String WHOLE = "whole";

    private final SparkSession engine;
    private final String folder;
    private final Dataset<Row> whole;

    private Tables(SparkSession engine, String folder, Dataset<Row> whole) {
        this.engine = engine;
        this.folder = folder;
        this.whole = whole;
    }

    /**
     * The tables of the records that are to be kept. Each is parsed once, into a file between from which all tables are
     * made.
     *
     * @param pieces into how many the work is divided
     * @param folder where the tables are to be written
     */
    static Tables of(SparkSession engine, Dataset<Row> kept, int pieces, Pseudonyms names, String folder) {
        Engine.doing(engine, "Reading the records");
        engine.createDataFrame(
                        kept.select(Copies.BUNDLE, Copies.OFFSET, Copies.LENGTH, Copies.FORKED)
                                .repartition(pieces, col(Copies.BUNDLE))
                                .sortWithinPartitions(Copies.BUNDLE, Copies.OFFSET)
                                .javaRDD()
                                .mapPartitions(rows -> parsed(rows, new SessionRows(names))),
                        SessionRows.WHOLE)
                .write()
                .option(NO_MARKS, "false")
                .parquet(folder + "/" + WHOLE);
        return new Tables(
                engine, folder, engine.read().schema(SessionRows.WHOLE).parquet(folder + "/" + WHOLE));
    }

    private static Iterator<Row> parsed(Iterator<Row> kept, SessionRows tables) {
        BundleStore.Sequence bundles = new BundleStore.Sequence();
        return new Iterator<>() {
            private Iterator<Row> next = Collections.emptyIterator();

            @Override
            public boolean hasNext() {
                while (!next.hasNext() && kept.hasNext()) {
                    Row row = kept.next();
                    next =
                            tables
                                    .of(
                                            bundles.record(row.getString(0), row.getInt(1), row.getInt(2)),
                                            row.getBoolean(3))
                                    .stream()
                                    .iterator();
                }
                return next.hasNext();
            }

            @Override
            public Row next() {
                if (!hasNext()) {
                    throw new NoSuchElementException("there is no further record");
                }
                return next.next();
            }
        };
    }

    /** A row for each session. */
    Dataset<Row> sessions() {
        return whole.select(col(MONTH), col(SESSIONS + ".*"));
    }

    /** A row for each thing in a session, with the session. */
    Dataset<Row> details(String table) {
        List<Column> columns = new ArrayList<>(List.of(col(MONTH), col(SESSION)));
        for (String name : detail(table).fieldNames()) {
            columns.add(col(ONE + "." + name));
        }
        return whole.select(
                        col(MONTH),
                        col(SESSIONS + "." + SESSION).as(SESSION),
                        explode(col(table)).as(ONE))
                .select(columns.toArray(Column[]::new));
    }

    /**
     * Writes all tables, and lets go of the file between.
     *
     * @throws IOException when the disk does not take them
     */
    void write() throws IOException {
        Engine.doing(engine, "Writing " + SESSIONS);
        write(sessions(), folder, SESSIONS, SESSION);
        for (String table : DETAILS.keySet()) {
            Engine.doing(engine, "Writing " + table);
            write(details(table), folder, table, EVENT);
        }
        Path between = new Path(folder, WHOLE);
        between.getFileSystem(engine.sparkContext().hadoopConfiguration()).delete(between, true);
    }

    private static void write(Dataset<Row> rows, String folder, String table, String order) {
        rows.repartition(col(MONTH))
                .sortWithinPartitions(MONTH, SESSION, order)
                .write()
                .mode(SaveMode.ErrorIfExists)
                .option("maxRecordsPerFile", MOST_ROWS_IN_FILE)
                .option(NO_MARKS, "false")
                .option("compression", "zstd")
                .partitionBy(MONTH)
                .parquet(folder + "/" + table);
    }

    /** Names of all tables, the sessions first. */
    static List<String> all() {
        return Stream.concat(Stream.of(SESSIONS), DETAILS.keySet().stream().sorted())
                .toList();
    }

    /** The form of a table as it is read. */
    static StructType form(String table) {
        StructType rows = table.equals(SESSIONS) ? SessionRows.SESSION : withSession(detail(table));
        return rows.add(MONTH, DataTypes.StringType);
    }

    private static StructType detail(String table) {
        return Objects.requireNonNull(DETAILS.get(table), table);
    }

    private static StructType withSession(StructType detail) {
        StructType form = new StructType().add(SESSION, DataTypes.StringType);
        for (StructField field : detail.fields()) {
            form = form.add(field);
        }
        return form;
    }
}
