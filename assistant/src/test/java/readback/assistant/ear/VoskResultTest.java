package readback.assistant.ear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import readback.grammar.Hypothesis;

/** The recogniser's own JSON, as version 0.3.45 writes it. */
class VoskResultTest {

    private static String alternative(double score, String... words) {
        StringBuilder json = new StringBuilder("{\"confidence\" : " + score + ", ");
        if (words.length > 0) {
            json.append("\"result\" : [");
            for (int i = 0; i < words.length; i++) {
                json.append(i == 0 ? "" : ", ")
                        .append("{\"end\" : " + (0.5 + i) + ", \"start\" : " + (0.1 + i) + ", \"word\" : \"" + words[i]
                                + "\"}");
            }
            json.append("], ");
        }
        return json + "\"text\" : \"" + String.join(" ", words) + "\"}";
    }

    private static String result(String... alternatives) {
        return "{\"alternatives\" : [" + String.join(", ", alternatives) + "]}";
    }

    @Test
    void aDifferenceOfScoresIsTheLogarithmOfTheOdds() {
        Utterance heard = VoskResult.utterance(
                        result(alternative(100 + Math.log(4), "fifteen"), alternative(100, "fifty")))
                .orElseThrow();

        assertThat(heard.words()).isEqualTo("fifteen");
        assertThat(heard.confidence()).isCloseTo(0.8, within(1e-9));
        assertThat(heard.alternatives().get(1).confidence()).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void alternativesWithTheSameWordsAreOne() {
        Utterance heard = VoskResult.utterance(result(
                        alternative(100 + Math.log(2), "sixty"),
                        alternative(100 + Math.log(1.5), "sixteen"),
                        alternative(100 + Math.log(1.5), "sixteen")))
                .orElseThrow();

        assertThat(heard.alternatives().stream().map(Hypothesis::words)).containsExactly("sixteen", "sixty");
        assertThat(heard.confidence()).isCloseTo(0.6, within(1e-9));
    }

    @Test
    void aWordInWhichAllAlternativesAgreeIsCertain() {
        Utterance heard = VoskResult.utterance(result(
                        alternative(100 + Math.log(3), "suction", "eighteen"), alternative(100, "suction", "eighty")))
                .orElseThrow();

        List<Hypothesis.Word> words = heard.alternatives().get(0).details();
        assertThat(words.get(0).confidence()).isCloseTo(1, within(1e-9));
        assertThat(words.get(1).confidence()).isCloseTo(0.75, within(1e-9));
        assertThat(heard.startSeconds()).isEqualTo(0.1);
        assertThat(heard.endSeconds()).isEqualTo(1.5);
    }

    @Test
    void silenceAsTheLikeliestIsNoUtterance() {
        assertThat(VoskResult.utterance(result(alternative(120)))).isEmpty();
        assertThat(VoskResult.utterance(result(alternative(120), alternative(115, "eight"))))
                .isEmpty();
        assertThat(VoskResult.utterance(result())).isEmpty();
    }

    @Test
    void silenceAsAnAlternativeTakesItsShare() {
        Utterance heard = VoskResult.utterance(result(alternative(100 + Math.log(3), "yes"), alternative(100)))
                .orElseThrow();

        assertThat(heard.alternatives()).hasSize(1);
        assertThat(heard.confidence()).isCloseTo(0.75, within(1e-9));
    }
}
