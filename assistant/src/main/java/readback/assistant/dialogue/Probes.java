package readback.assistant.dialogue;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import readback.calc.quantity.Quantity;

/**
 * What a session knows of its probes. Immutable.
 *
 * @param reports the latest of each, by number
 * @param places what each measures, by number, as the mapping has it or as it was said
 * @param troubles what was told to be wrong, by number; until the probe is steady again it is not told once more
 */
public record Probes(
        Map<Integer, ProbeReport> reports, Map<Integer, Quantity> places, Map<Integer, ProbeReport.Quality> troubles) {

    static final Probes NONE = new Probes(Map.of(), Map.of(), Map.of());

    public Probes {
        reports = Map.copyOf(reports);
        places = Map.copyOf(places);
        troubles = Map.copyOf(troubles);
    }

    /** Whether the probe was heard of before. */
    boolean knows(int number) {
        return reports.containsKey(number);
    }

    Optional<ProbeReport> report(int number) {
        return Optional.ofNullable(reports.get(number));
    }

    /** What a probe measures; empty until it is known. */
    public Optional<Quantity> place(int number) {
        return Optional.ofNullable(places.get(number));
    }

    /** The number of the probe that measures a quantity. */
    Optional<Integer> numberOf(Quantity quantity) {
        return places.entrySet().stream()
                .filter(place -> place.getValue() == quantity)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** Those of which nobody said what they measure, in the order of their numbers. */
    Stream<Probe> unnamed() {
        return reports.values().stream()
                .map(ProbeReport::probe)
                .filter(probe -> place(probe.number()).isEmpty())
                .sorted(Comparator.comparingInt(Probe::number));
    }

    /** The value that is offered for a quantity: the probe stands still. */
    public Optional<Given> offer(Quantity quantity) {
        return numberOf(quantity)
                .flatMap(this::report)
                .filter(report -> report.quality() == ProbeReport.Quality.STEADY)
                .flatMap(report -> report.of(quantity).map(reading -> new Given(reading, source(report))));
    }

    private static Optional<ProbeSource> source(ProbeReport report) {
        return report.value()
                .map(value -> new ProbeSource(
                        report.probe().number(), report.probe().channel(), value.raw(), value.measuredAt()));
    }

    Probes with(ProbeReport report) {
        Map<Integer, ProbeReport> more = new TreeMap<>(reports);
        more.put(report.probe().number(), report);
        return new Probes(more, places, troubles);
    }

    /** Where the probe measures this from now on, and no other does. */
    Probes placed(int number, Quantity quantity) {
        Map<Integer, Quantity> next = new TreeMap<>(places);
        next.values().remove(quantity);
        next.put(number, quantity);
        return new Probes(reports, next, troubles);
    }

    /** Where this was told to be wrong with the probe; empty where it is well again. */
    Probes troubled(int number, Optional<ProbeReport.Quality> told) {
        Map<Integer, ProbeReport.Quality> next = new TreeMap<>(troubles);
        told.ifPresentOrElse(quality -> next.put(number, quality), () -> next.remove(number));
        return new Probes(reports, places, next);
    }

    /** Nothing is offered until the probes are heard of again; what they measure is kept. */
    Probes forgotten() {
        return new Probes(Map.of(), places, Map.of());
    }
}
