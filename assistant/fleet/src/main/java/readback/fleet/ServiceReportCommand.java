package readback.fleet;

import java.io.PrintStream;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

@Command(name = "report")
final class ServiceReportCommand implements Callable<Integer> {
    ServiceReportCommand(PrintStream out, PrintStream err, Clock clock) {}

    @Override
    public Integer call() {
        return 0;
    }
}
