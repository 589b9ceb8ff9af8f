package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.UnitSetting;
import readback.grammar.Decision;
import readback.grammar.Expectation;
import readback.grammar.Grammar;
import readback.grammar.Hypothesis;
import readback.grammar.Prior;

class AcceptanceTest {

    private static Utterance heard(String words, double confidence) {
        Hypothesis.Word word = new Hypothesis.Word(words, confidence, 0.2, 0.9);
        return new Utterance(List.of(new Hypothesis(words, confidence, List.of(word))), 0.2, 0.9);
    }

    @ParameterizedTest
    @CsvSource({"one eighteen, 0.31", "[unk] one eighteen, 0.55", "[unk] stop, 0.85", "stop, 1", "[unk], 0.9"})
    void whatIsMeantForUsStaysAsItIs(String words, double confidence) {
        Utterance utterance = heard(words, confidence);

        assertThat(Acceptance.judged(utterance)).isEqualTo(utterance);
    }

    @ParameterizedTest
    @CsvSource({"one eighteen, 0.25", "[unk] one eighteen, 0.45", "[unk] stop, 0.7", "[unk] stop [unk], 1"})
    void whatIsHardlyMeantForUsIsUnknownAndKeepsWhatItSoundedLike(String words, double confidence) {
        Utterance judged = Acceptance.judged(heard(words, confidence));

        assertThat(judged.onlyUnknown()).isTrue();
        assertThat(judged.alternatives().stream().map(Hypothesis::words)).containsExactly(Ear.UNKNOWN, words);
        assertThat(judged.alternatives().stream()
                        .mapToDouble(Hypothesis::confidence)
                        .sum())
                .isLessThanOrEqualTo(1);
        assertThat(judged.startSeconds()).isEqualTo(0.2);
        assertThat(judged.endSeconds()).isEqualTo(0.9);
    }

    @Test
    void nothingIsTakenFromWhatIsHardlyMeantForUs() {
        Utterance judged = Acceptance.judged(heard("one eighteen psig", 0.25));

        assertThat(Grammar.standard()
                        .decide(
                                judged.alternatives(),
                                Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US),
                                Prior.indifferent()))
                .isInstanceOf(Decision.Ignore.class);
    }
}
