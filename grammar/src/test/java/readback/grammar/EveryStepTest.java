package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;

/** Everything that is listened for at any step, in both unit settings, with several seeds. */
class EveryStepTest {

    private static final Grammar GRAMMAR = Grammar.standard();
    private static final long SEEDS = 2;

    /**
     * Every situation that a dialogue can ask in: each quantity, each set of choices, nothing; in both unit settings.
     */
    static List<Expectation> steps() {
        List<Expectation> steps = new ArrayList<>();
        for (UnitSetting units : List.of(UnitSetting.US, UnitSetting.METRIC)) {
            steps.add(Expectation.open(units));
            for (Quantity quantity : Quantity.values()) {
                steps.add(Expectation.of(quantity, units));
            }
            for (String set : GRAMMAR.choices().sets()) {
                steps.add(new Expectation(set, Optional.empty(), Optional.of(set), Optional.empty(), units));
                steps.add(
                        new Expectation("question-" + set, Optional.empty(), Optional.of(set), Optional.empty(), units)
                                .answeredBy(Command.YES, Command.NO));
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

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("steps")
    void everyPhraseIsUnderstoodAsWhatItWasMadeFrom(Expectation step) {
        for (long seed = 1; seed <= SEEDS; seed++) {
            for (StepPhrases.Sample sample : GRAMMAR.samples(step, seed)) {
                List<Interpretation> understood = GRAMMAR.understand(sample.words(), step);
                assertThat(understood.get(0).meaning())
                        .as("seed %d, step %s, \"%s\" %s", seed, step.step(), sample.words(), understood)
                        .isEqualTo(sample.meaning());
            }
        }
    }

    /**
     * Where a phrase has a second meaning, it is asked about: no phrase is taken for something else without a question.
     */
    @Tag("slow")
    @ParameterizedTest
    @MethodSource("steps")
    void noPhraseIsTakenForAnythingElseWithoutAQuestion(Expectation step) {
        for (StepPhrases.Sample sample : GRAMMAR.samples(step, SEEDS + 1)) {
            Decision decision = GRAMMAR.decide(List.of(Hypothesis.typed(sample.words())), step, Prior.indifferent());
            if (decision instanceof Decision.Accept accept && !accept.doubtful()) {
                assertThat(accept.meaning())
                        .as("step %s, \"%s\"", step.step(), sample.words())
                        .isEqualTo(sample.meaning());
            } else {
                assertThat(decision)
                        .as("step %s, \"%s\"", step.step(), sample.words())
                        .isNotInstanceOf(Decision.Ignore.class)
                        .isNotInstanceOf(Decision.AskAgain.class);
            }
        }
    }
}
