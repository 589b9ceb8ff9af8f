package readback.fleet;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** A command of the fleet that ran in this process, on two cores; all of them share one engine. */
record FleetRun(int code, String out, String err) {

    static FleetRun of(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Fleet.run(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Stream.concat(Stream.of(arguments), Stream.of("--master", "local[2]"))
                        .toArray(String[]::new));
        return new FleetRun(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The lines of findings, without the bundles that they name, which depend on how sessions were packed. */
    List<String> findings() {
        return out.lines()
                .filter(line -> line.matches("(bundle|broken|fork|anchor) .*"))
                .map(line -> line.replaceAll("sessions-[0-9a-f]{24}\\.bundle", "BUNDLE")
                        .replaceAll("from byte \\d+", "from byte N"))
                .toList();
    }
}
