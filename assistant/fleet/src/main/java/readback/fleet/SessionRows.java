package readback.fleet;

import java.io.Serializable;
import java.nio.file.Path;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.ArrayType;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.jspecify.annotations.Nullable;
import readback.assistant.archive.Equipment;
import readback.assistant.archive.Summary;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Understood;
import readback.assistant.dialogue.outcome.ChargeVerdict;
import readback.assistant.dialogue.outcome.Figure;
import readback.assistant.dialogue.outcome.FrozenCoil;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.record.Entry;
import readback.assistant.record.RecordUnavailableException;
import readback.assistant.record.RecordedSession;
import readback.assistant.replay.Moment;
import readback.assistant.report.SessionExport;
import readback.calc.caution.CautionRule;
import readback.calc.diagnosis.Fault;
import readback.calc.name.ConstantName;
import readback.grammar.Command;
import readback.prompts.checklist.Judged;
import readback.prompts.checklist.Slot;

/**
 * One session as the rows of all tables. The form of the tables is stated here and nowhere guessed from what was said:
 * a field that nobody filled is empty or null, never a missing column.
 */
final class SessionRows implements Serializable {

    private static final long serialVersionUID = 1L;

    /** What makes a charge look like a leak where a system was filled from empty. */
    private static final Set<String> FILLING = Set.of("weigh-in", "weighed-in");

    /** What a verdict on the charge says of the unit. */
    private static final Map<String, Fault> CHARGE_FAULTS =
            Map.of("add", Fault.UNDERCHARGE, "recover", Fault.OVERCHARGE, "in-tolerance", Fault.NONE);

    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("uuuu-MM", Locale.ROOT);

    /** Columns of the sessions, besides the month. */
    static final StructType SESSION = new StructType()
            .add("session", DataTypes.StringType, false)
            .add("started", DataTypes.TimestampType, false)
            .add("zone", DataTypes.StringType)
            .add("minutes", DataTypes.DoubleType)
            .add("job", DataTypes.StringType)
            .add("refrigerant", DataTypes.StringType)
            .add("metering_device", DataTypes.StringType)
            .add("technician", DataTypes.StringType)
            .add("customer", DataTypes.StringType)
            .add("place", DataTypes.StringType)
            .add("site", DataTypes.StringType)
            .add("appliance", DataTypes.StringType)
            .add("unit", DataTypes.StringType)
            .add("tablet", DataTypes.StringType)
            .add("practice", DataTypes.BooleanType)
            .add("full_charge_kg", DataTypes.DoubleType)
            .add("filled", DataTypes.BooleanType)
            .add("verdict", DataTypes.StringType)
            .add("charge", DataTypes.StringType)
            .add("first_charge", DataTypes.StringType)
            .add("borderline", DataTypes.BooleanType)
            .add("fault_found", DataTypes.StringType)
            .add("doubts", DataTypes.IntegerType)
            .add("values_taken", DataTypes.IntegerType)
            .add("added_kg", DataTypes.DoubleType)
            .add("recovered_kg", DataTypes.DoubleType)
            .add("leak_test", DataTypes.StringType)
            .add("events", DataTypes.IntegerType)
            .add("closed", DataTypes.BooleanType)
            .add("program", DataTypes.StringType)
            .add("model", DataTypes.StringType)
            .add("head", DataTypes.StringType)
            .add("fault", DataTypes.StringType)
            .add("forked", DataTypes.BooleanType);

    static final StructType READING = new StructType()
            .add("event", DataTypes.IntegerType, false)
            .add("name", DataTypes.StringType)
            .add("value", DataTypes.DoubleType)
            .add("unit", DataTypes.StringType)
            .add("si", DataTypes.DoubleType)
            .add("si_unit", DataTypes.StringType);

    static final StructType VERDICT = new StructType()
            .add("event", DataTypes.IntegerType, false)
            .add("at", DataTypes.TimestampType)
            .add("judged", DataTypes.StringType)
            .add("verdict", DataTypes.StringType)
            .add("borderline", DataTypes.BooleanType);

    static final StructType MOVE = new StructType()
            .add("event", DataTypes.IntegerType, false)
            .add("at", DataTypes.TimestampType)
            .add("refrigerant", DataTypes.StringType)
            .add("direction", DataTypes.StringType)
            .add("kg", DataTypes.DoubleType)
            .add("cylinder", DataTypes.StringType);

    static final StructType CAUTION = new StructType()
            .add("event", DataTypes.IntegerType, false)
            .add("at", DataTypes.TimestampType)
            .add("caution", DataTypes.StringType)
            .add("signal", DataTypes.StringType)
            .add("waits", DataTypes.BooleanType)
            .add("passed_over", DataTypes.BooleanType);

    static final StructType DOUBT = new StructType()
            .add("event", DataTypes.IntegerType, false)
            .add("at", DataTypes.TimestampType)
            .add("kind", DataTypes.StringType)
            .add("asked", DataTypes.StringType);

    /** A session with all its rows. */
    static final StructType WHOLE = new StructType()
            .add("month", DataTypes.StringType, false)
            .add("sessions", SESSION, false)
            .add("readings", new ArrayType(READING, false), false)
            .add("verdicts", new ArrayType(VERDICT, false), false)
            .add("moves", new ArrayType(MOVE, false), false)
            .add("cautions", new ArrayType(CAUTION, false), false)
            .add("doubts", new ArrayType(DOUBT, false), false);

    private final Pseudonyms names;

    SessionRows(Pseudonyms names) {
        this.names = names;
    }

    /**
     * The rows of a record; empty where not even its header can be read.
     *
     * @param forked whether the session goes on in another way elsewhere
     */
    Optional<Row> of(byte[] record, boolean forked) {
        try {
            return Optional.of(row(RecordedSession.parse(record, Path.of("session.jsonl")), forked));
        } catch (RecordUnavailableException e) {
            return Optional.empty();
        }
    }

    private Row row(RecordedSession recorded, boolean forked) {
        Summary summary = Summary.of(recorded);
        SessionExport export = SessionExport.of(summary, recorded);
        return RowFactory.create(
                MONTH.format(summary.started().atZone(ZoneOffset.UTC)),
                session(recorded, summary, export, forked),
                export.readings().stream().map(SessionRows::reading).toArray(),
                export.verdicts().stream().map(SessionRows::verdict).toArray(),
                export.moves().stream()
                        .map(move -> RowFactory.create(
                                move.event(),
                                at(move.at()),
                                summary.refrigerant(),
                                ConstantName.of(move.movement().direction()),
                                Figure.of("", move.amount()).si(),
                                move.cylinder()))
                        .toArray(),
                cautions(recorded.entries()).toArray(),
                doubts(recorded.entries()).toArray());
    }

    private Row session(RecordedSession recorded, Summary summary, SessionExport export, boolean forked) {
        String technician = names.of("technician", folded(summary.technician(), names));
        String site = names.of("place", Equipment.plain(summary.place()));
        String unit = names.of("unit", Equipment.key(summary.appliance()));
        return RowFactory.create(
                summary.session(),
                at(summary.started()),
                summary.zone().getId(),
                summary.minutes(),
                recorded.settings().map(settings -> settings.job().id()).orElse(""),
                summary.refrigerant(),
                summary.meteringDevice(),
                technician,
                names.of("customer", folded(summary.customer(), names)),
                names.none() ? summary.place() : site,
                site,
                names.none() ? summary.appliance() : unit,
                unit,
                summary.tablet(),
                !summary.practice().isEmpty(),
                summary.fullChargeKilograms().isPresent()
                        ? summary.fullChargeKilograms().getAsDouble()
                        : null,
                summary.outcomes().stream().anyMatch(outcome -> FILLING.contains(outcome.judged())),
                summary.verdict(),
                summary.charge(),
                firstCharge(export),
                summary.borderline(),
                faultFound(recorded, firstCharge(export)),
                summary.doubts(),
                (int) recorded.entries().stream()
                        .flatMap(entry -> entry.outcome().changes().stream())
                        .filter(change ->
                                change.after().flatMap(Content::reading).isPresent())
                        .count(),
                summary.addedSaid() ? summary.addedKilograms() : null,
                summary.recoveredSaid() ? summary.recoveredKilograms() : null,
                summary.leakTest(),
                summary.events(),
                summary.closed(),
                recorded.header().program(),
                recorded.header().parts().getOrDefault("model", ""),
                summary.hash(),
                summary.fault(),
                forked);
    }

    /** Under a key, names that differ in case and signs only have one pseudonym. */
    private static String folded(String name, Pseudonyms names) {
        return names.none() ? name : Equipment.plain(name);
    }

    private static Timestamp at(Instant moment) {
        return Timestamp.from(moment);
    }

    private static Row reading(SessionExport.Stated stated) {
        Figure figure = stated.figure();
        return RowFactory.create(
                stated.entry().number(),
                figure.name(),
                figure.value().doubleValue(),
                figure.unit(),
                figure.si(),
                figure.siUnit());
    }

    private static Row verdict(SessionExport.Reached reached) {
        return RowFactory.create(
                reached.entry().number(),
                at(reached.entry().event().at()),
                ConstantName.of(reached.outcome().judged()),
                reached.outcome().name(),
                reached.outcome().borderline());
    }

    /** The first verdict on the charge; empty for none. */
    private static String firstCharge(SessionExport export) {
        return export.verdicts().stream()
                .map(SessionExport.Reached::outcome)
                .filter(outcome -> outcome.judged() == Judged.CHARGE)
                .map(JobOutcome::name)
                .findFirst()
                .orElse("");
    }

    /**
     * The fault that was found, as far as verdicts on the charge name one, by the name of a {@link Fault}: what was
     * suspected last where the charge was not to be touched, else what the first verdict means; empty for none.
     */
    private static String faultFound(RecordedSession recorded, String firstCharge) {
        String found = Optional.ofNullable(CHARGE_FAULTS.get(firstCharge))
                .map(ConstantName::of)
                .orElse("");
        for (Entry entry : recorded.entries()) {
            for (JobOutcome outcome : entry.outcome().standing()) {
                found = fault(outcome).orElse(found);
            }
        }
        return found;
    }

    private static Optional<String> fault(JobOutcome outcome) {
        if (outcome instanceof ChargeVerdict charge) {
            return charge.suspect().map(suspect -> ConstantName.of(suspect.fault()));
        }
        return outcome instanceof FrozenCoil ? Optional.of(ConstantName.of(Fault.FROZEN_COIL)) : Optional.empty();
    }

    /**
     * Cautions with whether work went on before they were said to be understood: a value or an answer was taken after
     * one that waits for that word, or the word never came.
     */
    private static List<Row> cautions(List<Entry> entries) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            for (CautionRule rule : entry.outcome().cautions()) {
                boolean waits = rule.caution().needsAcknowledgement();
                rows.add(RowFactory.create(
                        entry.number(),
                        at(entry.event().at()),
                        ConstantName.of(rule),
                        ConstantName.of(rule.signal()),
                        waits,
                        waits && passedOver(entries.subList(i + 1, entries.size()))));
            }
        }
        return rows;
    }

    private static boolean passedOver(List<Entry> after) {
        for (Entry entry : after) {
            Understood understood = entry.outcome().understood();
            if (understood.orders(Command.DONE) || understood.orders(Command.YES)) {
                return false;
            }
            if (entry.event() instanceof Event.Heard
                    && !entry.outcome().changes().isEmpty()) {
                return true;
            }
        }
        return true;
    }

    private static List<Row> doubts(List<Entry> entries) {
        List<Row> rows = new ArrayList<>();
        @Nullable Entry before = null;
        for (Entry entry : entries) {
            if (Moment.DOUBT.in(entry, Optional.ofNullable(before))) {
                Understood understood = entry.outcome().understood();
                boolean between = understood instanceof Understood.Between;
                rows.add(RowFactory.create(
                        entry.number(),
                        at(entry.event().at()),
                        between ? "between" : understood.doubtful() ? "not-understood" : "value-asked-about",
                        asked(understood)));
            }
            before = entry;
        }
        return rows;
    }

    /** The slot of the quantity that was asked about; empty where none was understood. */
    private static String asked(Understood understood) {
        if (understood instanceof Understood.Between between) {
            return between.candidates().stream()
                    .flatMap(meaning -> meaning.readings().stream())
                    .findFirst()
                    .map(reading -> Slot.of(reading.quantity()).id())
                    .orElse("");
        }
        return understood.stated().stream()
                .findFirst()
                .map(reading -> Slot.of(reading.quantity()).id())
                .orElse("");
    }
}
