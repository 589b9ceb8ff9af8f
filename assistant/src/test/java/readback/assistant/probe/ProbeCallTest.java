package readback.assistant.probe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.ghgande.j2mod.modbus.procimg.SimpleInputRegister;
import com.ghgande.j2mod.modbus.procimg.SimpleProcessImage;
import com.ghgande.j2mod.modbus.slave.ModbusSlave;
import com.ghgande.j2mod.modbus.slave.ModbusSlaveFactory;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import readback.assistant.dialogue.Content;
import readback.assistant.dialogue.Dialogue;
import readback.assistant.dialogue.Event;
import readback.assistant.dialogue.SessionSettings;
import readback.assistant.record.Header;
import readback.assistant.record.RecordedSession;
import readback.assistant.record.RemarkFile;
import readback.assistant.record.SessionRecord;
import readback.assistant.replay.Verification;
import readback.assistant.report.JobReport;
import readback.assistant.report.ReportPage;
import readback.assistant.session.Fingerprints;
import readback.assistant.session.Session;
import readback.calc.charge.Verdict;
import readback.calc.plant.AirConditioner;
import readback.calc.plant.FaultSet;
import readback.calc.plant.Measurands;
import readback.calc.plant.PlantFault;
import readback.calc.plant.TrainingUnit;
import readback.calc.plant.Transient;
import readback.calc.plant.Weather;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.prompts.checklist.Checklists;
import readback.prompts.text.Language;
import readback.prompts.text.Wording;

/**
 * A simulated unit on a Modbus line, a whole charge check beside it: what the rig knows goes through registers, frames,
 * conversion, stillness, dialogue and judgement, and the verdict is what is wrong with the rig.
 */
class ProbeCallTest {

    private static final Dialogue DIALOGUE = new Dialogue(Grammar.standard(), Checklists.standard());
    private static final Wording WORDING = Language.english().wording();
    private static final Instant MORNING = Instant.parse("2026-07-14T09:00:00Z");

    /** Four floats, absolute pressures in pascals and temperatures in degrees Celsius, high word first. */
    private static String mapping(int port, String order) {
        StringBuilder text = new StringBuilder();
        List<String> places =
                List.of("suction-pressure", "liquid-pressure", "suction-line-temperature", "liquid-line-temperature");
        for (int i = 0; i < places.size(); i++) {
            boolean pressure = i < 2;
            text.append("[").append(places.get(i)).append("]\n");
            text.append("from = modbus tcp 127.0.0.1:").append(port).append("\nunit-id = 1\nfunction = 4\n");
            text.append("register = ")
                    .append(2 * i)
                    .append("\ntype = float32\nword-order = ")
                    .append(order);
            text.append(pressure ? "\nunit = Pa\npressure = absolute\n" : "\nunit = Cel\n");
            text.append("measures = ").append(places.get(i)).append("\n");
        }
        return text.toString();
    }

    @TempDir
    Path sessions;

    private long nanos;
    private ModbusSlave slave;
    private final SimpleProcessImage image = new SimpleProcessImage(1);
    private int port;
    private ProbeWatch watch;
    private ModbusLink link;
    private SessionRecord record;
    private Session session;

    @BeforeEach
    void connect() throws Exception {
        port = ModbusLinkTest.freePort();
        for (int i = 0; i < 8; i++) {
            image.addInputRegister(i, new SimpleInputRegister(0));
        }
        slave = ModbusLinkTest.slave(port, 1, image);
        record = SessionRecord.create(sessions, new Header("call", MORNING, "test", Map.of(), Map.of()));
        session = Session.open(DIALOGUE, WORDING, record, List.of(), SessionSettings.STANDARD, MORNING);
        watch("high-first");
    }

    @AfterEach
    void disconnect() {
        link.close();
        ModbusSlaveFactory.close(slave);
        record.close();
    }

    private void watch(String order) throws MappingException, IOException {
        ProbeMapping mapping = ProbeMappingTest.mapping(mapping(port, order));
        watch = new ProbeWatch(mapping, () -> nanos);
        link = new ModbusLink(
                mapping.channels().get(0).wire(), mapping.channels(), watch::arrived, () -> nanos, Duration.ZERO);
        link.open();
    }

    private void shows(Measurands now) {
        put(0, now.suctionPressure().pascals());
        put(2, now.liquidPressure().pascals());
        put(4, now.suctionLine().celsius());
        put(6, now.liquidLine().celsius());
    }

    private void put(int register, double value) {
        int bits = Float.floatToIntBits((float) value);
        image.setInputRegister(register, new SimpleInputRegister(bits >>> 16));
        image.setInputRegister(register + 1, new SimpleInputRegister(bits & 0xffff));
    }

    private Instant now() {
        return MORNING.plusNanos(nanos);
    }

    /** Reads the registers once a second for a little over a minute. */
    private void standsStill() throws IOException {
        for (int second = 0; second < 62; second++) {
            nanos += Duration.ofSeconds(1).toNanos();
            link.next();
            poll();
        }
    }

    private void poll() {
        watch.poll(now(), session.assessment().air(), session.state().settings().units())
                .ifPresent(session::on);
    }

    private void says(String... lines) {
        for (String line : lines) {
            nanos += Duration.ofSeconds(2).toNanos();
            session.on(new Event.Heard(now(), Event.Source.KEYS, List.of(Hypothesis.typed(line))));
        }
    }

    private static Transient rig(TrainingUnit kind, FaultSet faults) {
        AirConditioner unit = kind.built();
        return Transient.started(unit, Weather.RATING, faults).after(Duration.ofMinutes(30));
    }

    @Test
    void aPistonUnitThatIsShortOfChargeIsFoundByItsProbes() throws Exception {
        Measurands truth = rig(TrainingUnit.THREE_TON_R410A_PISTON, FaultSet.of(PlantFault.UNDERCHARGE, 0.2))
                .now();
        shows(truth);
        standsStill();

        says("four ten a", "piston", "understood", "yes", "yes", "outdoor 95", "wet bulb 67");
        assertThat(session.assessment().readings().has(Quantity.SUCTION_PRESSURE))
                .as("nothing is taken that was not asked for")
                .isFalse();
        says("take", "take", "take", "take");

        assertThat(value(Quantity.SUCTION_PRESSURE).gaugePressure().pascals())
                .isCloseTo(truth.suctionPressure().pascals() - 101_325, within(400.0));
        assertThat(value(Quantity.SUCTION_LINE_TEMPERATURE).temperature().fahrenheit())
                .isCloseTo(truth.suctionLine().fahrenheit(), within(0.06));
        assertThat(session.assessment().judgement().orElseThrow().verdict().kind())
                .isEqualTo(Verdict.Kind.ADD);
        assertThat(replayed().difference()).isEmpty();
    }

    @Test
    void aSoundUnitIsFoundToBeInTolerance() throws Exception {
        shows(rig(TrainingUnit.THREE_TON_R410A_VALVE, FaultSet.none()).now());
        standsStill();

        says("four ten a", "thermostatic valve", "understood", "yes", "yes", "10", "outdoor 95", "unknown");
        says("take the liquid pressure", "take the liquid line", "take the suction", "take the suction line");

        assertThat(session.assessment().judgement().orElseThrow().verdict().kind())
                .isEqualTo(Verdict.Kind.IN_TOLERANCE);
        assertThat(replayed().difference()).isEmpty();
    }

    /** A float with its words swapped is a number, and stands still: only what can be tells it. */
    @Test
    void swappedWordsAreNeverOffered() throws Exception {
        link.close();
        watch("low-first");
        shows(rig(TrainingUnit.THREE_TON_R410A_PISTON, FaultSet.none()).now());
        standsStill();
        says("four ten a", "piston", "understood", "yes", "yes", "outdoor 95", "wet bulb 67");

        says("take");

        assertThat(session.assessment().readings().has(Quantity.SUCTION_PRESSURE))
                .isFalse();
        assertThat(session.expectation().probes().offered()).isEmpty();
        says("suction 118");
        assertThat(value(Quantity.SUCTION_PRESSURE).value()).isEqualByComparingTo("118");
    }

    @Test
    void whatStandsInTheRecordAndTheReportSaysWhichProbeAndWhatItShowed() throws Exception {
        shows(rig(TrainingUnit.THREE_TON_R410A_PISTON, FaultSet.none()).now());
        standsStill();
        says("four ten a", "piston", "understood", "yes", "yes", "outdoor 95", "wet bulb 67", "take");

        RecordedSession read = RecordedSession.read(record.folder().resolve(SessionRecord.FILE));
        JobReport report =
                JobReport.of(DIALOGUE, WORDING, Fingerprints.of(Checklists.standard()), read, RemarkFile.on(read));
        Content taken = report.answers().stream()
                .filter(line -> line.slot().quantity().equals(Optional.of(Quantity.SUCTION_PRESSURE)))
                .flatMap(line -> line.content().stream())
                .findFirst()
                .orElseThrow();
        assertThat(taken.probe()).hasValueSatisfying(probe -> {
            assertThat(probe.probe()).isEqualTo(1);
            assertThat(probe.channel()).isEqualTo("suction-pressure");
            assertThat(probe.raw()).matches("[0-9a-f]{4} [0-9a-f]{4} = [0-9.E]+ Pa\\(a\\)");
            assertThat(probe.measuredAt()).isAfter(MORNING);
        });
        assertThat(ReportPage.of(report, Language.english(), MORNING))
                .contains("taken from probe 1, suction-pressure: ");
    }

    private Reading value(Quantity quantity) {
        return session.assessment().readings().find(quantity).orElseThrow();
    }

    private Verification replayed() throws Exception {
        return Verification.of(
                DIALOGUE,
                WORDING,
                Fingerprints.of(Checklists.standard()),
                RecordedSession.read(record.folder().resolve(SessionRecord.FILE)));
    }
}
