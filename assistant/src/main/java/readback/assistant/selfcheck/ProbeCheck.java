package readback.assistant.selfcheck;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import readback.assistant.dialogue.ProbeReport;
import readback.assistant.probe.ProbeMapping;
import readback.assistant.probe.ProbeWatch;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.UnitSetting;

/** Whether the probes of a mapping give values. */
public final class ProbeCheck {

    /** An instrument that is there answers within this time. */
    private static final Duration PATIENCE = Duration.ofSeconds(6);

    private static final Duration BETWEEN = Duration.ofMillis(200);

    private static final String REMEDY =
            "See that it is switched on, and what its mapping says (--probes); until then every"
                    + " value can be called out.";

    private ProbeCheck() {}

    /** Listens to the probes for a few seconds; a finding for each, in the order of their numbers. */
    public static void run(ProbeMapping mapping, UnitSetting units, Consumer<CheckResult> told) {
        if (mapping.readsStandardInput()) {
            told.accept(CheckResult.doubtful(
                    "probes",
                    "Values come by the standard input, which is not read here.",
                    "Start a session with them to see what they show."));
            return;
        }
        try (ProbeWatch watch = ProbeWatch.of(mapping, System.in)) {
            Map<Integer, ProbeReport> seen = listened(watch, mapping.size(), units);
            mapping.probes().forEach(probe -> {
                Optional<ProbeReport> report = Optional.ofNullable(seen.get(probe.number()));
                String name = "Probe " + probe.number() + ", " + probe.channel();
                told.accept(report.flatMap(ProbeReport::value)
                        .map(value -> CheckResult.good(
                                "probe " + probe.number(),
                                name + ": " + value.value().toPlainString() + " "
                                        + value.unit().symbol() + " (" + value.raw() + ")."))
                        .orElseGet(() -> CheckResult.doubtful(
                                "probe " + probe.number(),
                                name + " gives no value" + why(watch.troubles()) + ".",
                                REMEDY)));
            });
        }
    }

    private static String why(List<String> troubles) {
        return troubles.isEmpty() ? "" : " (" + String.join("; ", troubles) + ")";
    }

    private static Map<Integer, ProbeReport> listened(ProbeWatch watch, int probes, UnitSetting units) {
        Map<Integer, ProbeReport> seen = new TreeMap<>(Comparator.naturalOrder());
        long end = System.nanoTime() + PATIENCE.toNanos();
        try {
            while (seen.size() < probes && System.nanoTime() - end < 0) {
                watch.poll(Instant.EPOCH, Atmosphere.SEA_LEVEL, units);
                watch.live().stream()
                        .filter(report -> report.value().isPresent())
                        .forEach(report -> seen.put(report.probe().number(), report));
                Thread.sleep(BETWEEN.toMillis());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return seen;
    }
}
