package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class RandomWordsTest {

    private static final int SEQUENCES = 30_000;

    /** A failure comes back with every run; {@link RandomWords} runs from other numbers. */
    private static final long START = 20261128;

    @Tag("slow")
    @Test
    void randomWordsNeverThrowAndNeverGiveAnImpossibleValue() {
        RandomWords fuzz = new RandomWords(START);

        assertThatCode(() -> {
                    for (int i = 0; i < SEQUENCES; i++) {
                        fuzz.next();
                    }
                })
                .as("start number %d", START)
                .doesNotThrowAnyException();
        assertThat(fuzz.values())
                .as("start number %d: values that were taken", START)
                .isPositive();
    }
}
