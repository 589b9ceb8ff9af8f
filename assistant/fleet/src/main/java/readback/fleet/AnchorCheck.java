package readback.fleet;

import static org.apache.spark.sql.functions.col;

import java.io.IOException;
import java.util.List;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import readback.assistant.record.Anchor;
import readback.assistant.record.ChainedRecord;
import scala.Tuple2;

/** What became of records that were anchored: a record that held an anchor holds it for ever, wherever it lies. */
final class AnchorCheck {

    static final String EVENTS = "events";
    static final String FINDING = "finding";
    private static final String HASH = "hash";

    private static final StructType ANCHORS = new StructType()
            .add(Copies.SESSION, DataTypes.StringType, false)
            .add(EVENTS, DataTypes.IntegerType, false)
            .add(HASH, DataTypes.StringType, false);

    /** The form of what is found. */
    static final StructType FINDINGS = new StructType()
            .add(Copies.SESSION, DataTypes.StringType, false)
            .add(EVENTS, DataTypes.IntegerType, false)
            .add(FINDING, DataTypes.StringType, false);

    private AnchorCheck() {}

    /** The anchors that do not hold: {@link Copies#SESSION}, {@link #EVENTS} and {@link #FINDING}. */
    static Dataset<Row> broken(SparkSession engine, Copies copies, List<Anchor> anchors) {
        Dataset<Row> list = engine.createDataFrame(
                anchors.stream()
                        .map(each -> RowFactory.create(each.session(), each.events(), each.hash()))
                        .toList(),
                ANCHORS);
        Dataset<Row> states = copies.records()
                .dropDuplicates(new String[] {Copies.SESSION, Copies.HEAD})
                .select(Copies.SESSION, Copies.LINES, Copies.HEAD, Copies.BUNDLE, Copies.OFFSET, Copies.LENGTH);
        return engine.createDataFrame(
                        list.join(states, new String[] {Copies.SESSION}, "left_outer")
                                .select(
                                        Copies.SESSION,
                                        EVENTS,
                                        HASH,
                                        Copies.LINES,
                                        Copies.HEAD,
                                        Copies.BUNDLE,
                                        Copies.OFFSET,
                                        Copies.LENGTH)
                                .javaRDD()
                                .mapToPair(AnchorCheck::finding)
                                .reduceByKey(AnchorCheck::together)
                                .map(each -> RowFactory.create(
                                        each._1().getString(0),
                                        each._1().getInt(1),
                                        each._2().name())),
                        FINDINGS)
                .filter(col(FINDING).notEqual(Anchor.Finding.HOLDS.name()));
    }

    /** What one state of a record makes of one anchor. */
    private static Tuple2<Row, Anchor.Finding> finding(Row row) throws IOException {
        Row anchor = RowFactory.create(row.getString(0), row.getInt(1), row.getString(2));
        if (row.isNullAt(3)) {
            return new Tuple2<>(anchor, Anchor.Finding.GONE);
        }
        int lines = row.getInt(1) + 1;
        if (lines > row.getInt(3)) {
            return new Tuple2<>(anchor, Anchor.Finding.SHORTENED);
        }
        String then = lines == row.getInt(3)
                ? row.getString(4)
                : ChainedRecord.of(BundleStore.record(row.getString(5), row.getInt(6), row.getInt(7)))
                        .hashes()
                        .get(lines - 1);
        return new Tuple2<>(anchor, then.equals(row.getString(2)) ? Anchor.Finding.HOLDS : Anchor.Finding.REWRITTEN);
    }

    /** It holds where any state of the record holds it; else the graver finding counts, which is the later one. */
    private static Anchor.Finding together(Anchor.Finding one, Anchor.Finding other) {
        boolean holds = one == Anchor.Finding.HOLDS || other == Anchor.Finding.HOLDS;
        if (holds) {
            return Anchor.Finding.HOLDS;
        }
        return one.compareTo(other) >= 0 ? one : other;
    }
}
