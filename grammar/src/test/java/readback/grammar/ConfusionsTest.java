package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import readback.grammar.Confusions.Confusion;

class ConfusionsTest {

    private static Hypothesis heard(String words, double confidence) {
        List<Hypothesis.Word> details = List.of(words.split(" ", -1)).stream()
                .map(word -> new Hypothesis.Word(word, confidence, 0, 0))
                .toList();
        return new Hypothesis(words, confidence, details);
    }

    @Test
    void everyConfusionOfTheWordsGivesAnAlternative() {
        Confusions confusions = new Confusions(List.of(
                new Confusion(List.of("one"), List.of("nine"), 0.1),
                new Confusion(List.of("one", "ninety"), List.of("one", "nine"), 0.2)));

        assertThat(confusions.alternatives(heard("one one ninety", 0.5)))
                .containsExactlyInAnyOrder(
                        new Confusions.Alternative("nine one ninety", 0.1),
                        new Confusions.Alternative("one nine ninety", 0.1),
                        new Confusions.Alternative("one one nine", 0.2));
    }

    @Test
    void theSurerTheRecogniserIsOfAWordTheLessAConfusionCounts() {
        Confusions confusions = new Confusions(List.of(new Confusion(List.of("sixty"), List.of("fifty"), 0.1)));

        assertThat(confusions.alternatives(heard("sixty", 1)).get(0).share()).isCloseTo(0.02, within(1e-9));
        assertThat(confusions.alternatives(heard("sixty", 0.95)).get(0).share()).isCloseTo(0.05, within(1e-9));
        assertThat(confusions.alternatives(heard("sixty", 0.4)).get(0).share()).isCloseTo(0.1, within(1e-9));
        assertThat(confusions.alternatives(Hypothesis.typed("sixty")).get(0).share())
                .isCloseTo(0.02, within(1e-9));
    }

    @Test
    void theMeasuredTableHoldsSharesOfNumberWords() {
        assertThat(Confusions.measured().alternatives(heard("sixty ninety seventy twenty two", 0.5)))
                .isNotEmpty()
                .allSatisfy(alternative -> assertThat(alternative.share()).isBetween(0.001, 0.5));
    }
}
