package readback.fleet;

import java.io.PrintStream;
import java.util.Optional;
import org.apache.spark.sql.SparkSession;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where the fleet's commands run. */
final class EngineOptions {

    @Option(
            names = "--master",
            paramLabel = "URL",
            description = "The engine to run on, as local[2] or spark://HOST:7077. Default: what spark-submit set, else"
                    + " all cores of this machine.")
    private @Nullable String master;

    SparkSession start(PrintStream told) {
        return Engine.start(Optional.ofNullable(master), told);
    }
}
