package readback.fleet;

import static org.apache.spark.sql.functions.broadcast;
import static org.apache.spark.sql.functions.coalesce;
import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.count;
import static org.apache.spark.sql.functions.count_distinct;
import static org.apache.spark.sql.functions.count_if;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.row_number;
import static org.apache.spark.sql.functions.sum;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.expressions.Window;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.apache.spark.storage.StorageLevel;
import readback.assistant.archive.Bundle;
import readback.assistant.record.ChainedRecord;
import readback.assistant.record.RecordFault;

/**
 * Every record in the bundles, once for each time that it lies there, with what its chain says. A chain is walked from
 * its first line to its last; different chains are walked at once, on as many cores as the engine has. Records are read
 * as bytes: whatever decodes a line may lose what the hash was made of.
 */
final class Copies {

    static final String BUNDLE = "bundle";
    static final String SESSION = "session";
    static final String OFFSET = "offset";
    static final String LENGTH = "length";
    static final String LINES = "lines";
    static final String HEAD = "head";
    static final String FAULTY_LINE = "faulty_line";
    static final String FAULT = "fault";
    static final String TROUBLE = "trouble";
    static final String FORKED = "forked";
    private static final String AFTER = "after";
    private static final String OTHER = "other";
    private static final String RANK = "rank";

    /** A row for each record; one with {@link #TROUBLE} alone for what is wrong with a bundle as a whole. */
    private static final StructType SCAN = new StructType()
            .add(BUNDLE, DataTypes.StringType, false)
            .add(SESSION, DataTypes.StringType)
            .add(OFFSET, DataTypes.IntegerType)
            .add(LENGTH, DataTypes.IntegerType)
            .add(LINES, DataTypes.IntegerType)
            .add(HEAD, DataTypes.StringType)
            .add(FAULTY_LINE, DataTypes.IntegerType)
            .add(FAULT, DataTypes.StringType)
            .add(TROUBLE, DataTypes.StringType);

    private static final StructType FORKS = new StructType()
            .add(SESSION, DataTypes.StringType, false)
            .add(AFTER, DataTypes.IntegerType, false)
            .add(BUNDLE, DataTypes.StringType, false)
            .add(OTHER, DataTypes.StringType, false);

    /** The work on small bundles is taken together, so that it is not lost among the starts of its pieces. */
    static final int MOST_PIECES = 1000;

    private final SparkSession engine;
    private final Dataset<Row> scan;
    private final Counts counts;
    private final Dataset<Row> forks;

    private Copies(SparkSession engine, Dataset<Row> scan) {
        this.engine = engine;
        this.scan = scan;
        this.counts = counted();
        this.forks = engine.createDataFrame(
                counts.inSeveralStates() == 0 ? List.of() : findForks().collectAsList(), FORKS);
    }

    /**
     * How many there are.
     *
     * @param records once for each time that they lie there
     * @param broken of these, records that do not hold
     * @param troubles findings about bundles as a whole
     * @param sessions with a name
     * @param states different records of all sessions
     * @param inSeveralStates sessions with more than one
     */
    record Counts(long records, long broken, long troubles, long sessions, long states, long inSeveralStates) {

        /** Records that lie there once more, byte for byte up to the last line that holds. */
        long repeated() {
            return records - states;
        }
    }

    /** Counted once, when the bundles were read. */
    Counts counts() {
        return counts;
    }

    private Counts counted() {
        Row all = scan.agg(count(col(LINES)), count_if(col(FAULTY_LINE).gt(0)), count(col(TROUBLE)))
                .head();
        Row states = records()
                .groupBy(SESSION, HEAD)
                .agg(lit(1).as(RANK))
                .groupBy(SESSION)
                .agg(count(lit(1)).as(RANK))
                .agg(
                        count_if(col(SESSION).notEqual("")),
                        coalesce(sum(RANK), lit(0L)),
                        count_if(col(RANK).gt(1).and(col(SESSION).notEqual(""))))
                .head();
        return new Counts(
                all.getLong(0),
                all.getLong(1),
                all.getLong(2),
                states.getLong(0),
                states.getLong(1),
                states.getLong(2));
    }

    /** The records in these bundles. The engine keeps what it found about them, so that they are read once. */
    static Copies in(SparkSession engine, List<String> bundles) {
        JavaSparkContext context = new JavaSparkContext(engine.sparkContext());
        JavaRDD<Row> scan = context.parallelize(bundles, Math.min(bundles.size(), MOST_PIECES))
                .flatMap(Copies::rows)
                .persist(StorageLevel.MEMORY_AND_DISK_SER());
        return new Copies(engine, engine.createDataFrame(scan, SCAN));
    }

    private static Iterator<Row> rows(String path) {
        Bundle bundle = BundleStore.read(path);
        Stream<Row> records = bundle.sessions().stream()
                .map(held -> RowFactory.create(
                        path,
                        held.session(),
                        held.offset(),
                        held.length(),
                        held.lines(),
                        held.head(),
                        held.fault().map(RecordFault::line).orElse(0),
                        held.fault().map(RecordFault::sentence).orElse(null),
                        null));
        Stream<Row> troubles = bundle.troubles().stream()
                .map(trouble -> RowFactory.create(path, null, null, null, null, null, null, null, trouble));
        return Stream.concat(records, troubles).iterator();
    }

    /** A row for each record, whether or not it holds. */
    Dataset<Row> records() {
        return scan.filter(col(TROUBLE).isNull());
    }

    /** What is wrong with bundles as a whole: {@link #BUNDLE}, {@link #TROUBLE}. */
    Dataset<Row> troubles() {
        return scan.filter(col(TROUBLE).isNotNull()).select(BUNDLE, TROUBLE);
    }

    /**
     * Records whose chain does not hold: {@link #SESSION}, {@link #BUNDLE}, {@link #OFFSET}, {@link #FAULTY_LINE},
     * {@link #FAULT}. The same record in several bundles is told for each.
     */
    Dataset<Row> broken() {
        return records().filter(col(FAULTY_LINE).gt(0)).select(SESSION, BUNDLE, OFFSET, FAULTY_LINE, FAULT);
    }

    /**
     * Sessions that go on in two ways: {@link #SESSION}, the last line that both have, and a bundle with each. One of
     * them was rewritten.
     */
    Dataset<Row> forks() {
        return forks;
    }

    /** One record for each session: the one with the most lines that hold; with {@link #FORKED}. */
    Dataset<Row> kept() {
        Column[] best = {
            col(LINES).desc(), col(FAULTY_LINE).equalTo(0).desc(), col(HEAD), col(LENGTH), col(BUNDLE), col(OFFSET)
        };
        Dataset<Row> first = records()
                .filter(col(SESSION).notEqual("").and(col(LINES).gt(0)))
                .withColumn(RANK, row_number().over(Window.partitionBy(SESSION).orderBy(best)))
                .filter(col(RANK).equalTo(1))
                .drop(RANK);
        Dataset<Row> forked = forks.select(col(SESSION), lit(true).as(FORKED));
        return first.join(broadcast(forked), SESSION_COLUMN, "left_outer")
                .withColumn(FORKED, coalesce(col(FORKED), lit(false)));
    }

    private static final String[] SESSION_COLUMN = {SESSION};

    /** Sessions that lie there in more than one state are few; only of those are all hashes compared. */
    private Dataset<Row> findForks() {
        Dataset<Row> named = records().filter(col(SESSION).notEqual(""));
        Dataset<Row> several = named.groupBy(SESSION)
                .agg(count_distinct(col(HEAD)).as(RANK))
                .filter(col(RANK).gt(1))
                .select(SESSION);
        Dataset<Row> states = named.join(several, SESSION_COLUMN, "left_semi")
                .orderBy(BUNDLE, OFFSET)
                .dropDuplicates(new String[] {SESSION, HEAD})
                .select(SESSION, BUNDLE, OFFSET, LENGTH, LINES);
        return engine.createDataFrame(
                states.javaRDD().groupBy(row -> row.getString(0)).flatMap(group -> fork(group._1(), group._2())),
                FORKS);
    }

    private record State(String bundle, ChainedRecord chain) {

        /** The last line, counted from 1, that two chains have in common; 0 for none. */
        int common(State other) {
            int common = 0;
            while (common < chain.hashes().size()
                    && common < other.chain.hashes().size()
                    && chain.hashes().get(common).equals(other.chain.hashes().get(common))) {
                common++;
            }
            return common;
        }
    }

    private static Iterator<Row> fork(String session, Iterable<Row> rows) throws IOException {
        List<State> states = new ArrayList<>();
        for (Row row : rows) {
            states.add(new State(
                    row.getString(1),
                    ChainedRecord.of(BundleStore.record(row.getString(1), row.getInt(2), row.getInt(3)))));
        }
        State longest = states.stream()
                .max(Comparator.<State>comparingInt(
                                each -> each.chain().hashes().size())
                        .thenComparing(each -> each.chain().head(), Comparator.reverseOrder()))
                .orElseThrow();
        return states.stream()
                .filter(each -> !each.chain().begins(longest.chain()))
                .min(Comparator.comparing(each -> each.chain().head()))
                .map(each -> RowFactory.create(session, longest.common(each), longest.bundle(), each.bundle()))
                .stream()
                .iterator();
    }
}
