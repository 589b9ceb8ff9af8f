package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;

class VocabularyTest {

    private static final Grammar GRAMMAR = Grammar.standard();

    /** Every situation that a dialogue can ask in: each quantity, each set of choices, nothing; in both unit settings. */
    static List<Expectation> steps() {
        List<Expectation> steps = new ArrayList<>();
        for (UnitSetting units : List.of(UnitSetting.US, UnitSetting.METRIC)) {
            steps.add(Expectation.open(units));
            for (Quantity quantity : Quantity.values()) {
                steps.add(Expectation.of(quantity, units));
            }
            for (String set : GRAMMAR.choices().sets()) {
                steps.add(new Expectation(set, Optional.empty(), Optional.of(set), Optional.empty(), units));
            }
        }
        return steps;
    }

    @ParameterizedTest
    @MethodSource("steps")
    void thePhrasesOfAStepUseOnlyWordsThatTheBundledModelHears(Expectation step) {
        SortedSet<String> missing = new TreeSet<>(GRAMMAR.vocabulary(step).words());
        missing.removeAll(AcousticModel.bundled().words());

        assertThat(missing).as("words that graph/words.txt lacks").isEmpty();
    }

    @ParameterizedTest
    @MethodSource("steps")
    void everyPhraseIsUnderstoodAsWhatItWasMadeFrom(Expectation step) {
        for (long seed = 1; seed <= 3; seed++) {
            for (StepPhrases.Sample sample : GRAMMAR.samples(step, seed)) {
                List<Interpretation> understood = GRAMMAR.understand(sample.words(), step);
                assertThat(understood.get(0).meaning())
                        .as("seed %d, step %s, \"%s\" %s", seed, step.step(), sample.words(), understood)
                        .isEqualTo(sample.meaning());
            }
        }
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
        assertThat(vocabulary.phrases()).contains("[unk]").hasSizeBetween(500, 4000);
    }

    @Test
    void theSameStepAlwaysListensForTheSame() {
        Expectation step = Expectation.of(Quantity.LIQUID_PRESSURE, UnitSetting.METRIC);

        assertThat(Grammar.standard().vocabulary(step)).isEqualTo(GRAMMAR.vocabulary(step));
    }
}
