package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;

/** What is said to probes: taken, named, and listened for only where there are some. */
class ProbeWordsTest {

    private static final Grammar GRAMMAR = Grammar.standard();
    private static final Expectation SUCTION = Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US);

    /** Everything that a call may have on its hoses and clamps. */
    private static final ProbesShown MANY = new ProbesShown(
            Set.of(
                    Quantity.SUCTION_PRESSURE,
                    Quantity.LIQUID_PRESSURE,
                    Quantity.SUCTION_LINE_TEMPERATURE,
                    Quantity.LIQUID_LINE_TEMPERATURE,
                    Quantity.OUTDOOR_TEMPERATURE,
                    Quantity.RETURN_WET_BULB),
            Map.of(
                    1, List.of(Quantity.SUCTION_PRESSURE, Quantity.LIQUID_PRESSURE),
                    2, List.of(Quantity.SUCTION_LINE_TEMPERATURE, Quantity.LIQUID_LINE_TEMPERATURE)));

    private static Meaning meaning(String words) {
        return GRAMMAR.understand(words, SUCTION).get(0).meaning();
    }

    @ParameterizedTest
    @ValueSource(strings = {"take", "take it", "okay take that", "use the probe"})
    void takeIsAnOrder(String words) {
        assertThat(meaning(words)).isEqualTo(new Meaning.Ordered(Command.TAKE));
    }

    @ParameterizedTest
    @CsvSource({
        "take the suction,SUCTION_PRESSURE",
        "take suction pressure,SUCTION_PRESSURE",
        "take the liquid line,LIQUID_LINE_TEMPERATURE",
        "take the wet bulb,RETURN_WET_BULB"
    })
    void takeNamesWhatIsMeant(String words, Quantity quantity) {
        assertThat(meaning(words)).isEqualTo(new Meaning.Ordered(Command.TAKE, Optional.of(quantity)));
    }

    @ParameterizedTest
    @CsvSource({
        "probe two is the suction line,2,SUCTION_LINE_TEMPERATURE",
        "probe 1 is the suction pressure,1,SUCTION_PRESSURE",
        "probe three is outdoor temperature,3,OUTDOOR_TEMPERATURE",
        "sensor four measures the liquid line,4,LIQUID_LINE_TEMPERATURE"
    })
    void aProbeIsGivenItsPlace(String words, int number, Quantity quantity) {
        assertThat(meaning(words)).isEqualTo(new Meaning.ProbeNamed(number, quantity));
    }

    @Test
    void whatAProbeReadsIsStillAValue() {
        assertThat(meaning("probe reads one eighteen").readings()).hasSize(1);
        assertThat(meaning("take the readings now")).isEqualTo(new Meaning.Ordered(Command.MEASURE_NOW));
    }

    @Test
    void nothingOfItIsListenedForWhereNoProbeIs() {
        assertThat(GRAMMAR.vocabulary(SUCTION).phrases())
                .noneMatch(phrase -> phrase.startsWith("probe") || phrase.equals("take") || phrase.equals("take it"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SUCTION_PRESSURE",
                "LIQUID_PRESSURE",
                "SUCTION_LINE_TEMPERATURE",
                "LIQUID_LINE_TEMPERATURE",
                "OUTDOOR_TEMPERATURE",
                "RETURN_WET_BULB"
            })
    void aStepListensForNoMorePhrasesThanWithoutProbes(Quantity asked) {
        Expectation plain = Expectation.of(asked, UnitSetting.US);

        List<String> phrases = GRAMMAR.vocabulary(plain.beside(MANY)).phrases();

        assertThat(phrases).contains("take", "take the suction pressure", "probe two is the suction line");
        assertThat(phrases)
                .hasSizeGreaterThan(2_500)
                .hasSizeLessThanOrEqualTo(
                        Math.max(5_000, GRAMMAR.vocabulary(plain).phrases().size()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"SUCTION_PRESSURE", "SUCTION_LINE_TEMPERATURE", "RETURN_WET_BULB"})
    void whateverIsListenedForBesideProbesIsUnderstood(Quantity asked) {
        Expectation step = Expectation.of(asked, UnitSetting.US).beside(MANY);

        for (StepPhrases.Sample sample : GRAMMAR.samples(step, 7)) {
            assertThat(GRAMMAR.understand(sample.words(), step).get(0).meaning())
                    .as(sample.words())
                    .isEqualTo(sample.meaning());
        }
    }
}
