package readback.assistant.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Change;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Delivery;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.Probe;
import readback.assistant.dialogue.ProbeReport;
import readback.assistant.dialogue.ProbeSource;
import readback.assistant.dialogue.ProbeValue;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.dialogue.Turn;
import readback.assistant.dialogue.Understood;
import readback.assistant.dialogue.outcome.AirflowBySplit;
import readback.assistant.dialogue.outcome.ApplicableTest;
import readback.assistant.dialogue.outcome.Capacity;
import readback.assistant.dialogue.outcome.ChargeVerdict;
import readback.assistant.dialogue.outcome.Evacuation;
import readback.assistant.dialogue.outcome.FrozenCoil;
import readback.assistant.dialogue.outcome.FunctionalFigures;
import readback.assistant.dialogue.outcome.HeaterAirflow;
import readback.assistant.dialogue.outcome.Heating;
import readback.assistant.dialogue.outcome.JobOutcome;
import readback.assistant.dialogue.outcome.PressureAtRest;
import readback.assistant.dialogue.outcome.PressureHold;
import readback.assistant.dialogue.outcome.StatedAirflow;
import readback.assistant.dialogue.outcome.ToWeighIn;
import readback.assistant.dialogue.outcome.WeighedIn;
import readback.calc.applicability.ChargeTest;
import readback.calc.caution.CautionRule;
import readback.calc.charge.Verdict;
import readback.calc.condition.Condition;
import readback.calc.diagnosis.Diagnosis;
import readback.calc.measurement.ChargeMethod;
import readback.calc.measurement.Comparison;
import readback.calc.measurement.Limits;
import readback.calc.plausibility.Contradiction;
import readback.calc.procedure.FunctionalCheck;
import readback.calc.procedure.HeatingCheck;
import readback.calc.procedure.RestingPressure;
import readback.calc.procedure.SplitCheck;
import readback.calc.procedure.StandingPressure;
import readback.calc.procedure.VacuumDecay;
import readback.calc.procedure.WeighIn;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Hypothesis;
import readback.grammar.Meaning;
import readback.prompts.checklist.JobId;
import readback.prompts.checklist.Slot;

class SessionRecordTest {

    private static final Instant NINE = Instant.parse("2026-07-14T09:00:00.250Z");
    private static final Header HEADER =
            new Header("call-1", NINE, "0.1.0", Map.of("grammar", "aa", "checklists", "bb"));

    @TempDir
    Path sessions;

    private static List<Entry> entries() {
        SessionSettings settings = new SessionSettings(
                        JobId.CHARGE_CHECK,
                        UnitSetting.METRIC,
                        true,
                        List.of(
                                new Reading(Quantity.ALTITUDE, new BigDecimal("1609.5"), Unit.METRE),
                                new Reading(Quantity.GAUGE_ACCURACY_OF_READING, new BigDecimal("0.5"), Unit.PERCENT),
                                new Reading(Quantity.CLAMP_ACCURACY, new BigDecimal("0.6"), Unit.KELVINS)),
                        Limits.INDEPENDENT_VERIFIER,
                        Optional.of("R-22"),
                        Optional.of("Lena Quarles"),
                        Optional.of("12 Mill Lane, \"Little Quarry\""))
                .having(Set.of(CautionRule.HIGH_PRESSURE, CautionRule.FROSTBITE))
                .delivered(new Delivery(142, 84));
        Hypothesis heard =
                new Hypothesis("suction one one eight", 0.75, List.of(new Hypothesis.Word("suction", 0.9, 0.5, 0.875)));
        Reading suction = new Reading(Quantity.SUCTION_PRESSURE, new BigDecimal("118.0"), Unit.PSIG);
        Turn.Outcome outcome = new Turn.Outcome(
                new Understood.Meant(new Meaning.Values(List.of(suction))),
                everyContent(suction),
                everyOutcome(),
                List.of(CautionRule.HIGH_PRESSURE));
        Turn.Outcome nothing = new Turn.Outcome(Understood.Occurrence.RESUMED, List.of(), List.of(), List.of());
        Turn.Outcome named = new Turn.Outcome(
                new Understood.Meant(new Meaning.ProbeNamed(2, Quantity.SUCTION_LINE_TEMPERATURE)),
                List.of(),
                List.of(),
                List.of());
        return List.of(
                new Entry(1, new Event.Started(NINE, settings), nothing, List.of("Hello \"there\" °F — \u2028")),
                new Entry(
                        2,
                        new Event.Heard(NINE, Event.Source.VOICE, List.of(heard)),
                        outcome,
                        List.of("Suction pressure 118.0 psig."),
                        List.of("suction, one one eight point zero p s i."),
                        false,
                        Optional.empty()),
                new Entry(3, new Event.TimerElapsed(NINE, "settle"), nothing, List.of()),
                new Entry(4, new Event.DeviceLost(NINE, "microphone"), nothing, List.of()),
                new Entry(5, new Event.DeviceFound(NINE, "microphone"), nothing, List.of()),
                new Entry(6, new Event.Resumed(NINE), nothing, List.of()),
                new Entry(7, new Event.ClockChanged(NINE, Duration.ofHours(-2)), nothing, List.of()),
                new Entry(8, new Event.Measured(NINE, everyReport()), named, List.of()),
                new Entry(9, new Event.Ended(NINE), nothing, List.of()));
    }

    private static List<ProbeReport> everyReport() {
        Probe gauge = new Probe(1, "suction-gauge", Dimension.GAUGE_PRESSURE, Optional.of(Quantity.SUCTION_PRESSURE));
        Probe clamp = new Probe(2, "clamp", Dimension.TEMPERATURE, Optional.empty());
        ProbeValue value = new ProbeValue(new BigDecimal("118.0"), Unit.PSIG, "4965 9000 = 915000 Pa(a)", NINE);
        return Stream.concat(
                        Stream.of(new ProbeReport(gauge, ProbeReport.Quality.STEADY, Optional.of(value))),
                        Stream.of(ProbeReport.Quality.values())
                                .filter(quality -> quality != ProbeReport.Quality.STEADY)
                                .map(quality -> new ProbeReport(clamp, quality, Optional.empty())))
                .toList();
    }

    private static List<Change> everyContent(Reading reading) {
        Optional<Content> value = Optional.of(new Content.Value(reading));
        return List.of(
                new Change(Slot.of(reading.quantity()), Optional.empty(), value),
                new Change(new Slot("plate"), value, Optional.empty()),
                new Change(
                        new Slot("offered"),
                        Optional.empty(),
                        Optional.of(new Content.Value(
                                reading, Optional.of(new ProbeSource(1, "suction-gauge", "915000 Pa(a)", NINE))))),
                new Change(new Slot("device"), Optional.empty(), Optional.of(new Content.Option("piston"))),
                new Change(
                        new Slot("settle"), Optional.empty(), Optional.of(new Content.Passed(Duration.ofSeconds(90)))),
                new Change(
                        new Slot("drier"), Optional.of(new Content.Skipped()), Optional.of(new Content.Option("no"))));
    }

    private static List<JobOutcome> everyOutcome() {
        return List.of(
                new ChargeVerdict(
                        Verdict.Kind.DO_NOT_CHARGE,
                        true,
                        ChargeMethod.SUBCOOLING,
                        Optional.of(Temperature.kelvin(280.345)),
                        Optional.of(Temperature.kelvin(316.873)),
                        Optional.of(TemperatureDifference.kelvins(8.36)),
                        Optional.of(TemperatureDifference.kelvins(-0.001)),
                        Optional.of(TemperatureDifference.kelvins(5.556)),
                        Optional.of(Comparison.Position.INSIDE),
                        List.of(Contradiction.Kind.values()),
                        Duration.ofMinutes(4),
                        List.of(Condition.values()),
                        Optional.of(new ChargeVerdict.Suspected(
                                readback.calc.diagnosis.Fault.NON_CONDENSABLES, Diagnosis.Certainty.AMBIGUOUS))),
                new AirflowBySplit(Optional.of(new AirflowBySplit.Split(SplitCheck.Outcome.SUFFICIENT, 192, 184))),
                new AirflowBySplit(Optional.empty()),
                new StatedAirflow(true, 400),
                new PressureHold(StandingPressure.Outcome.TIGHT, 1200),
                new Evacuation(VacuumDecay.Outcome.TIGHT, 3, 500),
                new ToWeighIn(new ToWeighIn.Amount.Grams(3200)),
                new ToWeighIn(new ToWeighIn.Amount.UnknownTube()),
                new ToWeighIn(new ToWeighIn.Amount.NothingLeft()),
                new ToWeighIn(new ToWeighIn.Amount.TooMuchForRooms(5200)),
                new FunctionalFigures(
                        Optional.of(12L),
                        Optional.empty(),
                        Optional.of(90L),
                        List.of(FunctionalCheck.Aspect.SUPERHEAT, FunctionalCheck.Aspect.SPLIT)),
                new WeighedIn(Optional.of(new WeighedIn.Weighed(WeighIn.Outcome.ON_TARGET, 3100, 3200))),
                new WeighedIn(Optional.empty()),
                new PressureAtRest(Optional.of(new PressureAtRest.Against(RestingPressure.Outcome.SATURATION, -400))),
                new FrozenCoil(Duration.ofMinutes(10)),
                new ApplicableTest(ChargeTest.WINTER_SET_UP),
                new HeaterAirflow(1129),
                new Capacity(10_550, 7_400, Optional.of(98L), Optional.of(340L)),
                new Capacity(-20, -10, Optional.empty(), Optional.empty()),
                new Heating(
                        HeatingCheck.Outcome.SUSPICIOUS,
                        List.of(HeatingCheck.Sign.values()),
                        Optional.empty(),
                        Optional.of(120L),
                        234,
                        Optional.of(1450L),
                        Optional.of(289L),
                        Optional.of(-3L)),
                new Heating(
                        HeatingCheck.Outcome.CANNOT_TELL,
                        List.of(),
                        Optional.of(HeatingCheck.Obstacle.INDOOR_UNUSUAL),
                        Optional.empty(),
                        234,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
    }

    @Test
    void a_value_is_written_with_all_its_digits() {
        assertThat(Json.write(new Reading(Quantity.ALTITUDE, new BigDecimal("4E+2"), Unit.FOOT)))
                .hasToString("{\"quantity\":\"ALTITUDE\",\"value\":\"400\",\"unit\":\"FOOT\"}");
    }

    private Path write() throws RecordUnavailableException {
        try (SessionRecord record = SessionRecord.create(sessions, HEADER)) {
            entries().forEach(entry -> assertThat(record.append(entry)).isEmpty());
            return record.folder().resolve(SessionRecord.FILE);
        }
    }

    @Test
    void what_was_recorded_is_read_back_the_same() throws RecordUnavailableException {
        RecordedSession read = RecordedSession.read(write());

        assertThat(read.header()).isEqualTo(HEADER);
        assertThat(read.entries()).isEqualTo(entries());
        assertThat(read.fault()).isEmpty();
    }

    @Test
    void an_entry_is_on_disk_when_append_returns() throws RecordUnavailableException {
        try (SessionRecord record = SessionRecord.create(sessions, HEADER)) {
            for (Entry entry : entries()) {
                assertThat(record.append(entry)).isEmpty();
                assertThat(RecordedSession.read(record.folder()).entries()).endsWith(entry);
            }
        }
    }

    @Tag("slow")
    @Test
    void every_flipped_byte_is_noticed() throws RecordUnavailableException, IOException {
        Path file = write();
        byte[] whole = Files.readAllBytes(file);
        for (int i = 0; i < whole.length; i++) {
            byte[] flipped = whole.clone();
            flipped[i] ^= 1;
            Files.write(file, flipped);
            Optional<RecordFault> fault;
            try {
                fault = RecordedSession.read(file).fault();
            } catch (RecordUnavailableException unreadable) {
                assertThat(unreadable).hasMessageContaining("line 1 ");
                fault = Optional.of(new RecordFault(1, RecordFault.Kind.CHANGED, "is no header"));
            }
            assertThat(fault).as("byte " + i).isPresent();
        }
    }

    @Test
    void a_removed_line_breaks_the_chain_where_it_was() throws RecordUnavailableException, IOException {
        Path file = write();
        List<String> lines = Files.readAllLines(file);
        Files.write(file, List.of(lines.get(0), lines.get(1), lines.get(3), lines.get(4)));

        assertThat(RecordedSession.read(file).fault())
                .contains(new RecordFault(3, RecordFault.Kind.MISPLACED, "does not follow the line before it"));
    }

    @Test
    void a_torn_last_line_is_dropped_and_named() throws RecordUnavailableException, IOException {
        Path file = write();
        String text = Files.readString(file);
        Files.writeString(file, text.substring(0, text.length() - 40));

        RecordedSession read = RecordedSession.read(file);

        assertThat(read.entries()).isEqualTo(entries().subList(0, 8));
        assertThat(read.fault().orElseThrow().toString()).startsWith("line 10 was cut off while it was written");
    }

    @Test
    void a_folder_that_cannot_be_made_is_one_sentence_with_what_to_do() throws IOException {
        Path file = Files.writeString(sessions.resolve("in-the-way"), "", StandardCharsets.UTF_8);

        assertThatThrownBy(() -> SessionRecord.create(file, HEADER))
                .isInstanceOf(RecordUnavailableException.class)
                .hasMessageContaining("in-the-way")
                .hasMessageContaining("--sessions");
    }

    @Test
    void what_is_no_record_is_said_to_be_none() throws IOException {
        Path file = Files.writeString(sessions.resolve("note.txt"), "hello\n", StandardCharsets.UTF_8);

        assertThatThrownBy(() -> RecordedSession.read(file))
                .isInstanceOf(RecordUnavailableException.class)
                .hasMessageContaining("is no session record");
        assertThatThrownBy(() -> RecordedSession.read(sessions.resolve("missing")))
                .isInstanceOf(RecordUnavailableException.class)
                .hasMessageContaining("There is no session record");
    }
}
