package readback.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.UnitSetting;

/** Typed sentences with words that nobody knows, and values that are told beside the one that they replace. */
class AmongOtherWordsTest {

    private static final Grammar GRAMMAR = Grammar.standard();
    private static final Expectation STEP = Expectation.of(Quantity.SUCTION_PRESSURE, UnitSetting.US);

    private static Decision typed(String words) {
        return GRAMMAR.decide(List.of(Hypothesis.typed(words)), STEP, Prior.indifferent());
    }

    @ParameterizedTest
    @CsvSource({
        "the blue needle trembles near one eighteen, SUCTION_PRESSURE, 118",
        "suction is bouncing around 118, SUCTION_PRESSURE, 118",
        "liquid line is scorching a hundred and five, LIQUID_LINE_TEMPERATURE, 105"
    })
    void a_value_among_words_that_nobody_knows_is_asked_about(String words, Quantity quantity, String value) {
        assertThat(typed(words)).isInstanceOfSatisfying(Decision.Accept.class, accepted -> {
            assertThat(accepted.meaning()).isEqualTo(new Meaning.Values(List.of(Reading.of(quantity, value))));
            assertThat(accepted.doubtful()).isTrue();
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "it never trembles above one eighteen",
                "don't scribble one eighteen",
                "trembles between one ten and one twenty",
                "my uncle bought nineteen trucks and forty trailers",
                "the needle of that gauge has been trembling all day near one eighteen"
            })
    void what_a_word_may_deny_or_too_many_words_surround_is_not_taken(String words) {
        assertThat(typed(words)).isInstanceOf(Decision.AskAgain.class);
    }

    @Test
    void what_is_spoken_has_no_words_that_nobody_knows() {
        Hypothesis heard = new Hypothesis(
                "pressure trembles one eighteen",
                0.99,
                List.of("pressure", "trembles", "one", "eighteen").stream()
                        .map(word -> new Hypothesis.Word(word, 0.99, 0, 0))
                        .toList());

        assertThat(GRAMMAR.decide(List.of(heard), STEP, Prior.indifferent())).isInstanceOf(Decision.AskAgain.class);
    }

    @ParameterizedTest
    @CsvSource({
        "one eighteen not one seventeen, SUCTION_PRESSURE, 118",
        "118 instead of 117, SUCTION_PRESSURE, 118",
        "outdoor ninety six rather than ninety five, OUTDOOR_TEMPERATURE, 96",
        "actually change the outdoor to ninety six, OUTDOOR_TEMPERATURE, 96"
    })
    void a_value_beside_the_one_that_it_replaces_is_a_correction(String words, Quantity quantity, String value) {
        assertThat(typed(words))
                .isEqualTo(new Decision.Accept(new Meaning.Correction(List.of(Reading.of(quantity, value))), 1, false));
    }

    @ParameterizedTest
    @ValueSource(strings = {"not one seventeen", "one eighteen not suction", "one eighteen not"})
    void a_denied_value_alone_corrects_nothing(String words) {
        assertThat(typed(words)).isInstanceOf(Decision.AskAgain.class);
    }
}
