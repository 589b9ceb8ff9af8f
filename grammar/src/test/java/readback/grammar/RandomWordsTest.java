package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class RandomWordsTest {

    private static final int SEQUENCES = 30_000;

    @Tag("slow")
    @Test
    void randomWordsNeverThrowAndNeverGiveAnImpossibleValue() {
        long seed = System.nanoTime();
        RandomWords fuzz = new RandomWords(seed);

        assertThatCode(() -> {
                    for (int i = 0; i < SEQUENCES; i++) {
                        fuzz.next();
                    }
                })
                .as("seed %d", seed)
                .doesNotThrowAnyException();
        assertThat(fuzz.values()).as("seed %d: values that were taken", seed).isPositive();
    }
}
