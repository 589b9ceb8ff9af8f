package readback.assistant.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import readback.grammar.Acceptance;

class TradeOffTest {

    private final TradeOff tradeOff = new TradeOff();

    private String row(String limit) {
        return tradeOff.lines().stream()
                .filter(line -> line.strip().startsWith(limit))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_higher_limit_lets_less_talk_pass_and_loses_more_words() {
        tradeOff.listened(PhraseList.DIGITS, 120);
        tradeOff.heardInTalk(PhraseList.DIGITS, new Acceptance(0.25), 6);
        tradeOff.heardInTalk(PhraseList.DIGITS, new Acceptance(0.95), 2);
        tradeOff.heardInSpeech(PhraseList.DIGITS, new Acceptance(1), 3);
        tradeOff.heardInSpeech(PhraseList.DIGITS, new Acceptance(0.55), 1);

        assertThat(row("0.00")).contains("4.0 /").contains("0.0%");
        assertThat(row("0.50")).contains("1.0 /").contains("0.0%");
        assertThat(row("0.60")).contains("1.0 /").contains("25.0%");
    }

    @Test
    void without_unrelated_speech_there_is_no_trade_off() {
        tradeOff.heardInSpeech(PhraseList.STEP, new Acceptance(1), 3);

        assertThat(tradeOff.lines()).isEqualTo(List.of());
    }
}
