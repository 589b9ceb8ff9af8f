package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;

class VocabularyTest {

    private static final Grammar GRAMMAR = Grammar.standard();

    @Test
    void everyPhraseOfAStepIsUnderstoodAsWhatItWasMadeFrom() {
        Expectation step = new Expectation(
                "metering-device",
                Optional.of(Quantity.NAMEPLATE_CHARGE),
                Optional.of("metering-device"),
                Optional.of(Quantity.SUCTION_PRESSURE),
                UnitSetting.METRIC);

        for (StepPhrases.Sample sample : GRAMMAR.samples(step, 7)) {
            assertThat(GRAMMAR.understand(sample.words(), step).get(0).meaning())
                    .as(sample.words())
                    .isEqualTo(sample.meaning());
        }
    }

    @Test
    void theAskedChoiceIsListenedForMoreThanOthers() {
        Expectation step = new Expectation(
                "refrigerant", Optional.empty(), Optional.of("refrigerant"), Optional.empty(), UnitSetting.US);

        List<String> phrases = GRAMMAR.vocabulary(step).phrases();

        assertThat(phrases).contains("four ten a", "r twenty two").doesNotContain("piston");
        assertThat(phrases.stream().filter("four ten a"::equals)).hasSizeGreaterThan(3);
    }

    @Test
    void aStepHasAllNumberWordsAndTheUnknownWord() {
        Vocabulary vocabulary = GRAMMAR.vocabulary(Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US));

        assertThat(vocabulary.step()).isEqualTo("SUCTION_PRESSURE");
        assertThat(vocabulary.words())
                .contains(
                        "[unk]",
                        "zero",
                        "oh",
                        "niner",
                        "fifteen",
                        "fifty",
                        "hundred",
                        "point",
                        "half",
                        "psi",
                        "correction");
        assertThat(vocabulary.phrases()).contains("[unk]").hasSizeBetween(2_500, 5_000);
    }

    static Stream<Expectation> situations() {
        return EveryStepTest.steps().stream()
                .flatMap(step -> Stream.of(
                        step,
                        step.answeredBy(Command.YES, Command.NO),
                        step.answeredBy(Command.DONE),
                        step.beside(new ProbesShown(
                                Set.of(Quantity.SUCTION_PRESSURE, Quantity.LIQUID_PRESSURE),
                                Map.of(3, List.of(Quantity.OUTDOOR_TEMPERATURE, Quantity.SUPPLY_DRY_BULB))))));
    }

    @ParameterizedTest
    @MethodSource("situations")
    void noStepAndNoDoubtListensForMoreThanFiveThousandPhrases(Expectation step) {
        assertThat(GRAMMAR.vocabulary(step).phrases()).hasSizeLessThanOrEqualTo(5_000);
    }

    @Test
    void theSameStepAlwaysListensForTheSame() {
        Expectation step = Expectation.of(Quantity.LIQUID_PRESSURE, UnitSetting.METRIC);

        assertThat(Grammar.standard().vocabulary(step).phrases())
                .isEqualTo(GRAMMAR.vocabulary(step).phrases());
    }

    @Test
    void unknownSpeechMakesUpTwoPercentOfWordsAndPhraseEnds() {
        List<String> phrases = new ArrayList<>(Collections.nCopies(100, "suction one eighteen"));

        List<String> all = Vocabulary.withUnknown(phrases);

        // 300 words and 100 ends: eight times unknown, half of them in pairs
        assertThat(all.subList(0, 100)).isEqualTo(phrases);
        assertThat(all.subList(100, all.size()))
                .containsExactly(
                        "[unk] [unk]", "[unk] [unk]", "[unk] [unk]", "[unk] [unk]", "[unk]", "[unk]", "[unk]", "[unk]");
    }

    @Test
    void unknownSpeechIsListedHoweverFewThePhrases() {
        assertThat(Vocabulary.withUnknown(List.of("yes"))).containsExactly("yes", "[unk]");
    }

    @Test
    void phrasesAreNotSortedByWhatTheyMean() {
        Expectation step = Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US);
        List<String> listed = Grammar.standard().vocabulary(step).phrases();
        List<String> made = GRAMMAR.samples(step, 20_261_125).stream()
                .map(StepPhrases.Sample::words)
                .toList();

        assertThat(listed.subList(0, 50)).isNotEqualTo(made.subList(0, 50));
    }
}
