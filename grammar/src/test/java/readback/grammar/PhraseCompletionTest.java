package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Ends are judged by English numbers and orders as people say them; the phrases are those of this test. */
class PhraseCompletionTest {
    private final PhraseCompletion ends = new PhraseCompletion(List.of(
            "one eighteen", "one twenty", "one twenty point five", "twenty", "suction pressure twenty", "repeat"));

    @ParameterizedTest
    @ValueSource(strings = {"one", "suction", "suction pressure", "one twenty point", "point"})
    void theBeginningOfAPhraseWaitsForMore(String said) {
        assertThat(ends.open(said)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"one eighteen", "one twenty", "twenty", "repeat", "suction pressure one eighteen"})
    void aWholePhraseWaitsForNothing(String said) {
        assertThat(ends.open(said)).isFalse();
    }

    @Test
    void aPhraseThatHardlyEverStandsAloneWaitsForMore() {
        List<String> phrases = new ArrayList<>(Collections.nCopies(99, "correction twenty"));
        phrases.add("correction");

        assertThat(new PhraseCompletion(phrases).open("correction")).isTrue();
        assertThat(new PhraseCompletion(phrases.subList(60, 100)).open("correction"))
                .isFalse();
    }

    @Test
    void speechThatIsNotMeantForUsIsNotWaitedFor() {
        assertThat(ends.open("[unk]")).isFalse();
        assertThat(ends.open("one [unk]")).isFalse();
    }
}
