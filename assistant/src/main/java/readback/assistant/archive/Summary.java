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
import java.util.OptionalDouble;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.Slots;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.record.About;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordedSession;
import readback.assistant.replay.ByNumber;
import readback.assistant.replay.ChargeMoves;
import readback.assistant.replay.JobFigures;
import readback.assistant.replay.Moment;
import readback.assistant.replay.WorkDone;
import readback.calc.name.ConstantName;
import readback.calc.procedure.RefrigerantBalance;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;

/**
 * A session in one line, from its record alone. What was never said is empty.
 *
 * @param session name of the session
 * @param zone whose local time the technician worked in, or that of the reader where the record does not tell
 * @param minutes from the start to the last event
 * @param customer who gets the report
 * @param tablet whose record it is, as its owner calls it
 * @param practice name of the scenario where it was practice at a simulated unit; empty for real work
 * @param fullChargeKilograms the full charge, as the rating plate was read; empty when nobody said
 * @param outcomes everything that stands at the end, the charge first
 * @param charge the last verdict on the charge that was announced, whether or not it stands; empty for none
 * @param doubts events with something doubtful
 * @param cautions given, each named once
 * @param moves refrigerant by cylinder; a cylinder that was not named is ""
 * @param leakTest the kind of leak test that was made, as in "bubbles"; empty when nobody said
 * @param work parts that were put in and what else was put right, in order, as in "capacitor"
 * @param addedSaid whether somebody said how much went in, be it none
 * @param recoveredSaid whether somebody said how much came out, be it none
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
        String customer,
        String tablet,
        String practice,
        OptionalDouble fullChargeKilograms,
        List<Outcome> outcomes,
        String charge,
        int doubts,
        List<String> cautions,
        List<Moved> moves,
        String leakTest,
        List<String> work,
        boolean addedSaid,
        boolean recoveredSaid,
        int events,
        boolean closed,
        String hash,
        String fault) {

    private static final double MILLIS_IN_MINUTE = 60_000;
    private static final double MILLION = 1e6;

    /** What one cylinder gave and took, kilograms. */
    public record Moved(String cylinder, double addedKilograms, double recoveredKilograms) {}

    /**
     * What a job came to.
     *
     * @param judged as in "pressure-test"
     * @param name in a word or two, as in "add" or "airflow sufficient"
     * @param figures what was measured for it, and the numbers that followed
     */
    public record Outcome(String judged, String name, boolean borderline, List<Figure> figures) {
        public Outcome {
            figures = List.copyOf(figures);
        }
    }

    public Summary {
        outcomes = List.copyOf(outcomes);
        cautions = List.copyOf(cautions);
        moves = List.copyOf(moves);
        work = List.copyOf(work);
    }

    /** The verdict on the charge, else the latest of the other outcomes; empty when there is none. */
    public Optional<Outcome> reached() {
        return outcomes.stream()
                .filter(outcome -> outcome.judged().equals(ConstantName.of(Judged.CHARGE)))
                .findFirst()
                .or(() -> outcomes.isEmpty() ? Optional.empty() : Optional.of(outcomes.get(outcomes.size() - 1)));
    }

    /** The verdict in a word or two, as in "add" or "airflow sufficient"; empty when there is none. */
    public String verdict() {
        return reached().map(Outcome::name).orElse("");
    }

    /** Whether the instruments cannot decide the verdict. */
    public boolean borderline() {
        return reached().filter(Outcome::borderline).isPresent();
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
        WorkDone work = new WorkDone();
        Map<String, String> answers = new HashMap<>();
        Map<Slot, Reading> readings = new HashMap<>();
        session.settings().ifPresent(settings -> {
            settings.technician().ifPresent(name -> answers.put(About.TECHNICIAN, name));
            settings.site().ifPresent(site -> answers.put(About.PLACE, site));
        });
        answers.putAll(session.header().about());
        List<String> cautions = new ArrayList<>();
        Optional<Entry> before = Optional.empty();
        List<JobOutcome> standing = List.of();
        String charge = "";
        String leakTest = "";
        int doubts = 0;
        for (Entry entry : session.entries()) {
            moves.follow(entry);
            work.follow(entry);
            entry.outcome().changes().forEach(change -> {
                answers.put(change.slot().id(), change.line());
                change.after()
                        .flatMap(Content::reading)
                        .ifPresentOrElse(
                                reading -> readings.put(change.slot(), reading), () -> readings.remove(change.slot()));
            });
            entry.outcome().cautions().stream()
                    .map(ConstantName::of)
                    .filter(each -> !cautions.contains(each))
                    .forEach(cautions::add);
            leakTest = entry.outcome()
                    .change(Slots.LEAK_TEST)
                    .map(change -> change.after()
                            .filter(Content.Option.class::isInstance)
                            .map(Content::line)
                            .orElse(""))
                    .orElse(leakTest);
            if (Moment.DOUBT.in(entry, before)) {
                doubts++;
            }
            standing = entry.outcome().standing();
            charge = standing.stream()
                    .filter(outcome -> outcome.judged() == Judged.CHARGE)
                    .map(JobOutcome::name)
                    .findFirst()
                    .orElse(charge);
            before = Optional.of(entry);
        }
        UnitSetting units = session.settings().map(SessionSettings::units).orElse(UnitSetting.US);
        List<Outcome> outcomes = standing.stream()
                .map(outcome -> new Outcome(
                        ConstantName.of(outcome.judged()),
                        outcome.name(),
                        outcome.borderline(),
                        JobFigures.of(outcome, units, slot -> Optional.ofNullable(readings.get(slot)))))
                .toList();
        Reading full = readings.get(Slot.of(Quantity.NAMEPLATE_CHARGE));
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
                named(About.TECHNICIAN, answers),
                named(About.APPLIANCE, answers),
                named(About.PLACE, answers),
                answers.getOrDefault(About.CUSTOMER, ""),
                answers.getOrDefault(About.TABLET, ""),
                answers.getOrDefault(About.PRACTICE, ""),
                full == null ? OptionalDouble.empty() : OptionalDouble.of(milligrams(full.base())),
                outcomes,
                charge,
                doubts,
                cautions,
                byCylinder(moves.balance()),
                leakTest,
                work.all().stream().map(told -> told.content().line()).toList(),
                moves.said(RefrigerantBalance.Direction.IN),
                moves.said(RefrigerantBalance.Direction.OUT),
                session.entries().size(),
                session.closed(),
                session.hash(),
                session.fault().map(Object::toString).orElse(""));
    }

    private static String named(String name, Map<String, String> answers) {
        return ByNumber.of(
                        name,
                        Optional.ofNullable(answers.get(name)),
                        slot -> Optional.ofNullable(answers.get(slot.id())).filter(number -> !number.isEmpty()))
                .orElse("");
    }

    private static double milligrams(double kilograms) {
        return Math.round(kilograms * MILLION) / MILLION;
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
