package readback.assistant.archive;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/**
 * The sessions on one piece of equipment, oldest first.
 *
 * @param key by which they were found together: {@link Equipment}
 */
public record Visits(String key, List<Summary> all) {

    /** The leak rate of the rules counts so many days back. 40 CFR 82.152, 84.102. */
    private static final Duration YEAR = Duration.ofDays(365);

    /** Verdicts after which the charge has to be corrected and measured again. */
    private static final Set<String> UNSETTLED = Set.of("add", "recover");

    /** A system that is filled anew loses nothing by it. */
    private static final Set<String> FILLING = Set.of("weigh-in", "weighed-in");

    public Visits {
        all = List.copyOf(all);
    }

    /** The visits to every equipment that was named, by its key. */
    public static List<Visits> of(List<Summary> sessions) {
        Map<String, List<Summary>> byKey = new TreeMap<>();
        sessions.stream()
                .filter(session -> !Equipment.key(session.appliance()).isEmpty())
                .sorted(Comparator.comparing(Summary::started))
                .forEach(session -> byKey.computeIfAbsent(Equipment.key(session.appliance()), any -> new ArrayList<>())
                        .add(session));
        List<Visits> visits = new ArrayList<>();
        byKey.forEach((key, some) -> visits.add(new Visits(key, some)));
        return visits;
    }

    /** The latest session. */
    public Summary last() {
        return all.get(all.size() - 1);
    }

    /** The latest sessions, oldest first. */
    public List<Summary> last(int count) {
        return all.subList(Math.max(0, all.size() - count), all.size());
    }

    /** The full charge that was read last, kilograms; empty where nobody read it. */
    public OptionalDouble fullChargeKilograms() {
        return all.stream()
                .filter(session -> session.fullChargeKilograms().isPresent())
                .reduce((earlier, later) -> later)
                .map(Summary::fullChargeKilograms)
                .orElse(OptionalDouble.empty());
    }

    /** The refrigerant that was named last; empty where nobody named one. */
    public String refrigerant() {
        return all.stream()
                .map(Summary::refrigerant)
                .filter(name -> !name.isEmpty())
                .reduce((earlier, later) -> later)
                .orElse("");
    }

    /** Kilograms added in the 365 days up to a moment, but for what was weighed into an empty system. */
    public double addedInAYearTo(Instant moment) {
        return all.stream()
                .filter(session -> !session.started().isAfter(moment)
                        && session.started().isAfter(moment.minus(YEAR))
                        && session.outcomes().stream().noneMatch(outcome -> FILLING.contains(outcome.judged())))
                .mapToDouble(Summary::addedKilograms)
                .sum();
    }

    /** The session that left the charge unsettled with no measurement after it; empty where there is none. */
    public Optional<Summary> unsettled() {
        return all.stream()
                .filter(session -> !session.charge().isEmpty())
                .reduce((earlier, later) -> later)
                .filter(session -> UNSETTLED.contains(session.charge()));
    }
}
