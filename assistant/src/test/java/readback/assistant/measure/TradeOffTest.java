package readback.assistant.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import readback.assistant.ear.Utterance;
import readback.grammar.Hypothesis;

class TradeOffTest {

    private final TradeOff tradeOff = new TradeOff();

    private static Utterance utterance(String words, double belief, double from, double to) {
        return new Utterance(List.of(new Hypothesis(words, belief, List.of())), from, to);
    }

    /** The rows of a limit: of both limits alike, then of the limit amid talk. */
    private List<String> rows(String limit) {
        return tradeOff.lines().stream()
                .filter(line -> line.strip().startsWith(limit + " "))
                .toList();
    }

    @Test
    void a_higher_limit_lets_less_talk_pass_and_loses_more_words() {
        tradeOff.listened(PhraseList.DIGITS, 120);
        tradeOff.heardInTalk(PhraseList.DIGITS, List.of(utterance("one two three four five six", 0.25, 1, 3)));
        tradeOff.heardInTalk(PhraseList.DIGITS, List.of(utterance("seven eight", 0.95, 1, 3)));
        tradeOff.heardInSpeech(PhraseList.DIGITS, List.of(utterance("one two three", 1, 1, 3)));
        tradeOff.heardInSpeech(PhraseList.DIGITS, List.of(utterance("four", 0.55, 1, 3)));

        assertThat(rows("0.00")).singleElement().asString().contains("4.0 /").contains("0.0%");
        assertThat(rows("0.50").get(0)).contains("1.0 /").contains("0.0%");
        assertThat(rows("0.60").get(0)).contains("1.0 /").contains("25.0%");
    }

    @Test
    void the_limit_amid_talk_counts_only_close_after_what_was_not_looked_at() {
        tradeOff.listened(PhraseList.STEP, 60);
        Utterance refused = utterance("[unk] [unk]", 0.2, 1, 2);
        tradeOff.heardInTalk(
                PhraseList.STEP, List.of(refused, utterance("one", 0.7, 3, 4), utterance("two", 0.7, 4, 5)));
        tradeOff.heardInTalk(PhraseList.STEP, List.of(refused, utterance("three", 0.7, 7, 8)));

        assertThat(rows("0.60").get(1)).contains("3.0 /");
        assertThat(rows("0.80").get(1)).contains("1.0 /");
    }

    @Test
    void without_unrelated_speech_there_is_no_trade_off() {
        tradeOff.heardInSpeech(PhraseList.STEP, List.of(utterance("one two three", 1, 1, 3)));

        assertThat(tradeOff.lines()).isEqualTo(List.of());
    }
}
