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
import readback.grammar.Decision;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Prior;

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

    private static List<String> words(List<Utterance> utterances) {
        return utterances.stream().map(Utterance::words).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"piston", "valve"})
    void everyLineOfTheCallIsHeardAsItsScriptSays(String call) {
        assertThat(words(heard(SpokenLines.sound(call), asked(call)))).isEqualTo(SpokenLines.of(call));
    }

    @ParameterizedTest
    @ValueSource(strings = {"piston", "valve"})
    void everyLineOfTheCallIsTakenWithoutADoubt(String call) {
        List<Expectation> asked = asked(call);
        List<Utterance> utterances = heard(SpokenLines.sound(call), asked);

        for (int i = 0; i < asked.size(); i++) {
            Decision decision = GRAMMAR.decide(utterances.get(i).alternatives(), asked.get(i), Prior.indifferent());
            assertThat(decision)
                    .as(utterances.get(i).toString())
                    .isInstanceOfSatisfying(
                            Decision.Accept.class,
                            accept -> assertThat(accept.doubtful()).isFalse());
        }
    }

    @Test
    void theSameCallAtFortyEightKilohertzIsHeardAlike() {
        assertThat(words(heard(SpokenLines.sound("piston").at(48000), asked("piston"))))
                .isEqualTo(SpokenLines.of("piston"));
    }

    @Test
    void ofATruncatedCallTheReadablePartIsHeard() {
        byte[] whole = SpokenLines.bytes("piston.wav");
        byte[] half = Arrays.copyOf(whole, whole.length / 2);

        Recording recording = Recording.read("half of the call", new ByteArrayInputStream(half));

        assertThat(recording.problem().orElseThrow()).contains("cut off");
        assertThat(words(heard(recording.samples().orElseThrow(), asked("piston")))
                        .subList(0, 5))
                .isEqualTo(SpokenLines.of("piston").subList(0, 5));
    }
}
