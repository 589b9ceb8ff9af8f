package readback.fleet;

import java.io.PrintStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.apache.spark.SparkConf;
import org.apache.spark.scheduler.SparkListener;
import org.apache.spark.scheduler.SparkListenerStageCompleted;
import org.apache.spark.scheduler.SparkListenerStageSubmitted;
import org.apache.spark.scheduler.SparkListenerTaskEnd;
import org.apache.spark.sql.SparkSession;

/** The engine, as the fleet's commands set it. */
final class Engine {

    private static final String MASTER = "spark.master";
    private static final String LOCAL = "local";
    private static final String THIS_MACHINE = "127.0.0.1";

    /** So many nanoseconds between two lines about the progress. */
    private static final long BETWEEN_LINES = 2_000_000_000L;

    private Engine() {}

    /**
     * Starts it, or takes the one that runs already.
     *
     * @param master as Spark names it, as in "local[2]" or "spark://office:7077"; empty for the one that
     *     {@code spark-submit} set, else for all cores of this machine
     * @param told gets a line now and then on how far it is
     */
    static SparkSession start(Optional<String> master, PrintStream told) {
        if (!System.getProperty("os.name", "").equals("Linux")) {
            throw new FleetFailure("The fleet's commands run on Linux only, and this is "
                    + System.getProperty("os.name") + ": use a machine or a virtual machine with Linux.");
        }
        SparkConf settings = new SparkConf().setAppName("readback-fleet");
        master.ifPresent(settings::setMaster);
        settings.setIfMissing(MASTER, LOCAL + "[*]");
        if (settings.get(MASTER).startsWith(LOCAL)) {
            settings.setIfMissing("spark.driver.host", THIS_MACHINE)
                    .setIfMissing("spark.driver.bindAddress", THIS_MACHINE)
                    .setIfMissing("spark.ui.enabled", "false")
                    .setIfMissing(
                            "spark.sql.shuffle.partitions",
                            String.valueOf(2 * Runtime.getRuntime().availableProcessors()));
        }
        settings.set("spark.sql.session.timeZone", "UTC")
                // what other programs read as a moment
                .set("spark.sql.parquet.outputTimestampType", "TIMESTAMP_MICROS");
        told.println("Starting the engine (some ten seconds) ...");
        SparkSession engine = started(settings);
        engine.sparkContext().setLogLevel("ERROR");
        engine.sparkContext().addSparkListener(new ProgressLines(told));
        return engine;
    }

    private static SparkSession started(SparkConf settings) {
        try {
            return SparkSession.builder().config(settings).getOrCreate();
        } catch (RuntimeException e) {
            throw new FleetFailure(
                    "The engine at '" + settings.get(MASTER) + "' cannot be started (" + e.getMessage()
                            + "): name one that runs, or leave out --master for this machine.",
                    e);
        }
    }

    /** Says what is being done, in the lines about the progress from now on. */
    static void doing(SparkSession engine, String what) {
        engine.sparkContext().setJobDescription(what);
    }

    /** Tells now and then how many pieces of the work are done. Called by one thread of the engine. */
    private static final class ProgressLines extends SparkListener {

        private static final String WHAT = "spark.job.description";

        private final PrintStream told;
        private final Map<Integer, Stage> stages = new HashMap<>();
        private long last = System.nanoTime();

        /** A part of the work, with what it is called and its pieces. */
        private static final class Stage {
            private final String what;
            private final int pieces;
            private int done;

            Stage(String what, int pieces) {
                this.what = what;
                this.pieces = pieces;
            }
        }

        ProgressLines(PrintStream told) {
            this.told = told;
        }

        @Override
        public void onStageSubmitted(SparkListenerStageSubmitted submitted) {
            Properties properties = submitted.properties();
            stages.put(
                    submitted.stageInfo().stageId(),
                    new Stage(
                            properties == null ? "" : properties.getProperty(WHAT, ""),
                            submitted.stageInfo().numTasks()));
        }

        @Override
        public void onStageCompleted(SparkListenerStageCompleted completed) {
            stages.remove(completed.stageInfo().stageId());
        }

        @Override
        public void onTaskEnd(SparkListenerTaskEnd task) {
            Stage stage = stages.get(task.stageId());
            if (stage == null) {
                return;
            }
            stage.done++;
            if (System.nanoTime() - last > BETWEEN_LINES) {
                last = System.nanoTime();
                told.println(stage.what + ": " + stage.done + " of " + stage.pieces + " pieces done ...");
            }
        }
    }
}
