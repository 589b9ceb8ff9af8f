package readback.assistant.archive;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import readback.assistant.dialogue.Slots;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.record.About;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordedSession;
import readback.assistant.replay.ChargeMoves;
import readback.assistant.replay.Moment;
import readback.calc.name.ConstantName;
import readback.calc.procedure.RefrigerantBalance;

/**
 * A session in one line, from its record alone. What was never said is empty.
 *
 * @param session name of the session
 * @param zone whose local time the technician worked in, or that of the reader where the record does not tell
 * @param minutes from the start to the last event
 * @param verdict the last one in a word or two, as in "add" or "airflow sufficient"
 * @param doubts events with something doubtful
 * @param cautions given, each named once
 * @param moves refrigerant by cylinder; a cylinder that was not named is ""
 * @param hash of the record's last line that holds
 * @param fault what is wrong with the record; empty when its chain holds
 */
public record Summary(
        String session,
        Instant started,
        ZoneId zone,
        double minutes,
        String refrigerant,
        String meteringDevice,
        String technician,
        String appliance,
        String place,
        String verdict,
        boolean borderline,
        int doubts,
        List<String> cautions,
        List<Moved> moves,
        int events,
        boolean closed,
        String hash,
        String fault) {

    private static final double MILLIS_IN_MINUTE = 60_000;

    /** What one cylinder gave and took, kilograms. */
    public record Moved(String cylinder, double addedKilograms, double recoveredKilograms) {}

    public Summary {
        cautions = List.copyOf(cautions);
        moves = List.copyOf(moves);
    }

    /** Kilograms put into the system. */
    public double addedKilograms() {
        return moves.stream().mapToDouble(Moved::addedKilograms).sum();
    }

    /** Kilograms taken out of the system. */
    public double recoveredKilograms() {
        return moves.stream().mapToDouble(Moved::recoveredKilograms).sum();
    }

    /** The summary of a record. */
    public static Summary of(RecordedSession session) {
        ChargeMoves moves = new ChargeMoves(session.header().about());
        Map<String, String> answers = new HashMap<>();
        session.settings().ifPresent(settings -> {
            settings.technician().ifPresent(name -> answers.put(About.TECHNICIAN, name));
            settings.site().ifPresent(site -> answers.put(About.PLACE, site));
        });
        answers.putAll(session.header().about());
        List<String> cautions = new ArrayList<>();
        Optional<Entry> before = Optional.empty();
        List<JobOutcome> standing = List.of();
        int doubts = 0;
        for (Entry entry : session.entries()) {
            moves.follow(entry);
            entry.outcome()
                    .changes()
                    .forEach(change -> answers.put(change.slot().id(), change.line()));
            entry.outcome().cautions().stream()
                    .map(ConstantName::of)
                    .filter(each -> !cautions.contains(each))
                    .forEach(cautions::add);
            if (Moment.DOUBT.in(entry, before)) {
                doubts++;
            }
            standing = entry.outcome().standing();
            before = Optional.of(entry);
        }
        Optional<JobOutcome> reached = standing.stream().findFirst();
        return new Summary(
                session.header().session(),
                session.header().startedAt(),
                session.header().shownIn(),
                before.map(last -> Duration.between(
                                                session.header().startedAt(),
                                                last.event().at())
                                        .toMillis()
                                / MILLIS_IN_MINUTE)
                        .orElse(0.0),
                answers.getOrDefault(Slots.REFRIGERANT.id(), ""),
                answers.getOrDefault(Slots.METERING_DEVICE.id(), ""),
                answers.getOrDefault(About.TECHNICIAN, ""),
                answers.getOrDefault(About.APPLIANCE, ""),
                answers.getOrDefault(About.PLACE, ""),
                reached.map(JobOutcome::name).orElse(""),
                reached.filter(JobOutcome::borderline).isPresent(),
                doubts,
                cautions,
                byCylinder(moves.balance()),
                session.entries().size(),
                session.closed(),
                session.hash(),
                session.fault().map(Object::toString).orElse(""));
    }

    private static List<Moved> byCylinder(RefrigerantBalance balance) {
        Map<String, Moved> byCylinder = new LinkedHashMap<>();
        for (RefrigerantBalance.Movement movement : balance.movements()) {
            double kilograms = movement.amount().kilograms();
            boolean in = movement.direction() == RefrigerantBalance.Direction.IN;
            byCylinder.merge(
                    movement.cylinder(),
                    new Moved(movement.cylinder(), in ? kilograms : 0, in ? 0 : kilograms),
                    (a, b) -> new Moved(
                            a.cylinder(),
                            a.addedKilograms() + b.addedKilograms(),
                            a.recoveredKilograms() + b.recoveredKilograms()));
        }
        return List.copyOf(byCylinder.values());
    }
}
