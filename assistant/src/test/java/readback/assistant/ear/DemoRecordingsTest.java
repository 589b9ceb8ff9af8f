package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import readback.assistant.sound.Recording;
import readback.assistant.sound.Samples;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Meaning;

/** The shipped recordings through the real recogniser, with the vocabulary that the dialogue listens with. */
class DemoRecordingsTest {
    private static final Grammar GRAMMAR = Grammar.standard();

    private VoskEar ear;

    @BeforeEach
    void open() throws EarUnavailableException {
        ear = BundledEar.open();
    }

    @AfterEach
    void close() {
        ear.close();
    }

    /** What the dialogue asks while each line of the call is spoken. */
    private static List<Expectation> asked(String call) {
        List<Expectation> asked = new ArrayList<>(List.of(
                choice("refrigerant"),
                choice("metering-device"),
                value(Quantity.OUTDOOR_TEMPERATURE),
                value(Quantity.RETURN_WET_BULB),
                Expectation.open(UnitSetting.US)));
        if (call.equals("piston")) {
            asked.addAll(List.of(
                    value(Quantity.SUCTION_PRESSURE),
                    value(Quantity.SUCTION_PRESSURE),
                    after(Quantity.SUCTION_PRESSURE, Quantity.SUCTION_LINE_TEMPERATURE),
                    value(Quantity.SUCTION_LINE_TEMPERATURE),
                    Expectation.open(UnitSetting.US)));
        } else {
            asked.addAll(List.of(
                    value(Quantity.LIQUID_PRESSURE),
                    value(Quantity.LIQUID_LINE_TEMPERATURE),
                    value(Quantity.LIQUID_LINE_TEMPERATURE),
                    value(Quantity.PLATE_SUBCOOLING),
                    value(Quantity.SUCTION_PRESSURE),
                    value(Quantity.SUCTION_LINE_TEMPERATURE),
                    Expectation.open(UnitSetting.US)));
        }
        return asked;
    }

    private static Expectation choice(String set) {
        return new Expectation(set, Optional.empty(), Optional.of(set), Optional.empty(), UnitSetting.US);
    }

    private static Expectation value(Quantity quantity) {
        return Expectation.of(quantity, UnitSetting.US);
    }

    private static Expectation after(Quantity last, Quantity next) {
        return new Expectation(next.name(), Optional.of(next), Optional.empty(), Optional.of(last), UnitSetting.US);
    }

    private List<Utterance> heard(Samples sound, List<Expectation> asked) {
        AudioFileFeed feed = new AudioFileFeed(ear, sound);
        List<Utterance> utterances = new ArrayList<>();
        while (!feed.ended()) {
            Expectation now = asked.get(Math.min(utterances.size(), asked.size() - 1));
            feed.next(GRAMMAR.vocabulary(now).phrases()).ifPresent(utterances::add);
        }
        return utterances;
    }

    /** What the lines mean when each is said at its step. */
    private static List<Meaning> meanings(List<String> lines, List<Expectation> asked) {
        List<Meaning> meanings = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Expectation now = asked.get(Math.min(i, asked.size() - 1));
            meanings.add(GRAMMAR.understand(lines.get(i), now).get(0).meaning());
        }
        return meanings;
    }

    private List<Meaning> understood(Samples sound, List<Expectation> asked) {
        return meanings(heard(sound, asked).stream().map(Utterance::words).toList(), asked);
    }

    private static List<Meaning> meant(String call) {
        return meanings(SpokenLines.of(call), asked(call));
    }

    @ParameterizedTest
    @ValueSource(strings = {"piston", "valve"})
    void everyLineOfTheCallIsUnderstoodAsItsScriptMeansIt(String call) {
        assertThat(meant(call)).noneMatch(Meaning.NotUnderstood.class::isInstance);
        assertThat(understood(SpokenLines.sound(call), asked(call))).isEqualTo(meant(call));
    }

    @Test
    void theSameCallAtFortyEightKilohertzIsHeardAlike() {
        assertThat(understood(SpokenLines.sound("piston").at(48000), asked("piston")))
                .isEqualTo(meant("piston"));
    }

    @Test
    void ofATruncatedCallTheReadablePartIsHeard() {
        byte[] whole = SpokenLines.bytes("piston.wav");
        byte[] half = Arrays.copyOf(whole, whole.length / 2);

        Recording recording = Recording.read("half of the call", new ByteArrayInputStream(half));

        assertThat(recording.problem().orElseThrow()).contains("cut off");
        assertThat(understood(recording.samples().orElseThrow(), asked("piston"))
                        .subList(0, 5))
                .isEqualTo(meant("piston").subList(0, 5));
    }
}
